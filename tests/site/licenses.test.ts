import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'node-html-parser';
import { describe, expect, it } from 'vitest';
import { packageOf, unlike } from '../../src/integrations/shipped.ts';
import { licenseOf } from '../../src/site/licenses.ts';
import { shippedPackages } from '../../src/site/shippedPackages.ts';
import { root } from '../support/files.ts';
import { attributes, dist, filesOf, readingText, textOf } from './builtSite.ts';

const page = textOf(dist, 'licenses/index.html');
const texts = parse(page, { blockTextElements: { pre: true } })
  .querySelectorAll('pre')
  .map(({ textContent }) => textContent);

describe('the page of licenses', () => {
  it.each(shippedPackages)('shows %s with its version, license and whole text', (name) => {
    const { version, license, text } = licenseOf(name);
    expect(readingText(page)).toContain(`${name} ${version}, ${license}`);
    expect(texts).toContain(text);
    expect(text).toMatch(/copyright|brings no text of its license.*, by \w/i);
  });

  it('shows our own notice, which it asks people to keep', () => {
    expect(texts[0]).toBe(readFileSync(join(root, 'LICENSE'), 'utf8').trim());
  });

  it('is linked', () => {
    expect(attributes(textOf(dist, 'about/index.html'), 'href')).toContain('/licenses/');
  });

  // By what others write into their own code, whatever the build believes.
  it.each([
    ['katex', /\.katex-html/, 'css'],
    ['idb', /IDBCursor/, 'js'],
    ['preact', /__html/, 'js'],
    ['@fontsource-variable/atkinson-hyperlegible-next', /atkinson-hyperlegible-next/, 'css'],
  ] as const)('names %s, which stands in the built files', (name, sign, ending) => {
    const files = filesOf(dist, new RegExp(`\\.${ending}$`));
    expect(files.some((file) => sign.test(textOf(dist, file)))).toBe(true);
    expect(shippedPackages).toContain(name);
  });

  it('lists licenses that let others hand the work on', () => {
    // The four kinds that are here; another one is for people to read first.
    for (const name of shippedPackages) expect(['MIT', 'ISC', 'BSD-3-Clause', 'OFL-1.1'], name).toContain(licenseOf(name).license);
  });
});

describe('the list', () => {
  it('lacks nothing that is shipped and holds nothing that is not', () => {
    expect(unlike(new Set(['one', 'two']), ['one', 'two'])).toEqual([]);
    expect(unlike(new Set(['one', 'two']), ['one'])).toEqual(['two is shipped: add it to src/site/shippedPackages.ts, so that its license is shown']);
    expect(unlike(new Set(['one']), ['one', 'two'])).toEqual(['two is no longer shipped: take it out of src/site/shippedPackages.ts']);
  });

  it('knows a package by its folder', () => {
    expect(packageOf('/site/node_modules/@scope/name/files/a.woff2?url')).toBe('@scope/name');
    expect(packageOf('/site/node_modules/outer/node_modules/inner/a.js')).toBe('inner');
    expect(packageOf('\0rolldown/runtime.js')).toBe('rolldown');
    expect(packageOf('/site/src/a.ts')).toBeUndefined();
    expect(packageOf('\0virtual:workings')).toBeUndefined();
  });

  it('says what a package must bring', () => {
    const packages = join(root, 'node_modules/.cache/tests/packages');
    const write = (name: string, about: object): void => {
      mkdirSync(join(packages, name), { recursive: true });
      writeFileSync(join(packages, name, 'package.json'), JSON.stringify({ version: '1.0.0', ...about }));
    };
    write('silent', {});
    write('nameless', { license: 'MIT' });
    write('textless', { license: 'MIT', author: { name: 'A. Person' } });
    expect(() => licenseOf('silent', packages)).toThrow(/license/);
    expect(() => licenseOf('nameless', packages)).toThrow('nameless names neither');
    expect(licenseOf('textless', packages).text).toBe('textless brings no text of its license. Its description says: MIT, by A. Person.');
    expect(readFileSync(join(root, 'node_modules/katex/LICENSE'), 'utf8')).toContain(licenseOf('katex').text);
  });
});
