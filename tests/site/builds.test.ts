import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeOffice } from '../../src/office/model/officeFile.ts';
import { anOffice } from '../office/anOffice.ts';
import { root } from '../support/files.ts';
import { attributes, dist, filesOf, textOf } from './builtSite.ts';

const buildLimitMs = 240_000;

/** The test runner's own variables (a base address among them) must not reach the build. */
const inherited = Object.fromEntries(['PATH', 'HOME', 'TMPDIR', 'ASTRO_TELEMETRY_DISABLED'].map((name) => [name, process.env[name] ?? '']));

function build(folder: string, variables: Readonly<Record<string, string>> = {}): string {
  execFileSync(process.execPath, [join(root, 'node_modules/astro/bin/astro.mjs'), 'build'], {
    cwd: root,
    env: { ...inherited, HOLDWATER_OUT: folder, ...variables },
    stdio: 'pipe',
  });
  return join(root, folder);
}

const fingerprints = (folder: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    filesOf(folder, /./).map((file) => [
      file,
      createHash('sha256')
        .update(readFileSync(join(folder, file)))
        .digest('hex'),
    ]),
  );

describe('a build', () => {
  it('gives the same bytes again', { timeout: buildLimitMs }, () => {
    // On the same day, should midnight pass between the two.
    const [day] = attributes(textOf(dist, 'calculators/storm-runoff/index.html'), 'data-built');
    const again = build('dist-again', { SOURCE_DATE_EPOCH: String(Date.parse(`${day}T12:00`) / 1000) });
    expect(fingerprints(again)).toEqual(fingerprints(dist));
  });

  it('for a folder of a server keeps every link under that folder', { timeout: buildLimitMs }, () => {
    const given = join(root, 'node_modules/.cache/tests/office.css');
    mkdirSync(dirname(given), { recursive: true });
    writeFileSync(given, writeOffice(anOffice));
    const folder = build('dist-base', { HOLDWATER_BASE: '/field/', HOLDWATER_OFFICE: given });
    // With the file of an office, given as it is.
    expect(textOf(folder, 'office.css')).toBe(writeOffice(anOffice));
    const inPages = filesOf(folder, /\.html$/).flatMap((page) => ['href', 'src', 'action'].flatMap((name) => attributes(textOf(folder, page), name)));
    const inStyles = filesOf(folder, /\.css$/).flatMap((file) =>
      [...textOf(folder, file).matchAll(/url\(["']?([^"')]+)/g)].map((found) => found[1] ?? ''),
    );
    const fromRoot = [...inPages, ...inStyles].filter((link) => /^\/(?!\/)/.test(link));
    expect(fromRoot.length).toBeGreaterThan(100);
    expect(fromRoot.filter((link) => !link.startsWith('/field/'))).toEqual([]);
    // The same site otherwise.
    expect(filesOf(folder, /\.html$/)).toEqual(filesOf(dist, /\.html$/));
  });

  it('stops at a wrong file of an office, with the sentence that its page says', { timeout: buildLimitMs }, () => {
    const given = join(root, 'node_modules/.cache/tests/wrong-office.css');
    mkdirSync(dirname(given), { recursive: true });
    writeFileSync(given, writeOffice(anOffice).replace('"likelyUsdPerTon": 165', '"likelyUsdPerTon": "abc"'));
    expect(() => build('dist-wrong', { HOLDWATER_OFFICE: given })).toThrow(
      /Line \d+, Hay, likely: “abc” is no number; write dollars a ton, such as 165\./,
    );
    expect(existsSync(join(root, 'dist-wrong'))).toBe(false);
  });
});
