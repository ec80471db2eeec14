import { inflateSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inflate, joinFiles, sha256Of, splitFiles } from '../../src/copy/packFormat.ts';
import { choosePacks } from '../../src/integrations/copy/choosePacks.ts';
import { copyOf } from '../../src/integrations/copy/copyOf.ts';
import { aSite } from '../support/aPhone.ts';

const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);
const listed = (path: string, content: Uint8Array<ArrayBuffer>) => ({ path, type: 'text/plain', sha256: '', length: content.length, content });

describe('a pack', () => {
  it('gives back the files that were put in', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.string(), fc.uint8Array())), (files) => {
        const given = files.map(([path, content]) => listed(path, new Uint8Array(content)));
        expect(splitFiles(joinFiles(given))).toEqual(given);
      }),
    );
  });

  it('that is cut anywhere, or longer than its list, is none', () => {
    const pack = joinFiles([listed('a', bytesOf('hay')), listed('b', bytesOf('grass'))]);
    for (let length = 0; length < pack.length; length += 1) expect(() => splitFiles(pack.slice(0, length)), String(length)).toThrow();
    expect(() => splitFiles(new Uint8Array([...pack, 0]))).toThrow('its list tells of');
  });

  it('is compressed as RFC 1950 says, which Node’s own zlib and the browser’s stream read alike', async () => {
    const { packs } = aSite('one').copy;
    expect(packs.size).toBeGreaterThan(10);
    for (const bytes of packs.values()) {
      const copied = new Uint8Array(bytes);
      expect(await inflate(copied)).toEqual(new Uint8Array(inflateSync(copied)));
    }
    await expect(inflate(bytesOf('<h1>Sign in</h1>'))).rejects.toThrow();
  });

  // FIPS 180-4, the example of one block: the message "abc".
  it('is checked by SHA-256', async () => {
    expect(await sha256Of(bytesOf('abc'))).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });
});

describe('which file goes into which pack', () => {
  const files = [
    ...['404.html', 'index.html', 'about/index.html', 'search/index.html', 'search/index.json', 'guides/index.html', 'guides/resting/index.html'],
    ...['calculators/index.html', 'calculators/season/index.html', 'calculators/season/working/index.html', 'office.js', 'opening.js'],
    ...[
      '_astro/form.AbCdEf12.js',
      '_astro/working-season.AbCdEf12.js',
      '_astro/base.AbCdEf12.css',
      '_astro/text.AbCdEf12.woff2',
      '_astro/KaTeX_Main-Regular.AbCdEf12.woff2',
      '_astro/KaTeX_Fraktur-Bold.AbCdEf12.woff2',
    ],
    ...[
      'sources/index.html',
      'sources/m/index.html',
      'sources/usda.bib',
      'search/citations-u.json',
      'tables/x/index.html',
      'sheets/x/index.html',
      'local/index.html',
    ],
    ...['favicon.svg', 'icon-192.png', 'site.webmanifest', 'place/index.html'],
  ];
  const leftOut = ['worker.js', 'office.css', 'pictures/home.png', 'copy/old.1234567890.pack', 'holdwater.pdf', 'books/all.epub', 'holdwater.zip'];
  const stageOf = (file: string) => choosePacks(files).find((pack) => pack.files.includes(file))?.stage;

  it('takes each file once, and leaves out the worker, the office’s file, README’s pictures and what is printed', () => {
    const packed = choosePacks([...files, ...leftOut]).flatMap((pack) => pack.files);
    expect(packed.toSorted()).toEqual(files.toSorted());
  });

  it('puts first what every page needs, then home, guides, calculators and search, and last what a field can do without', () => {
    for (const file of [
      '_astro/KaTeX_Main-Regular.AbCdEf12.woff2',
      '_astro/form.AbCdEf12.js',
      '_astro/base.AbCdEf12.css',
      '_astro/text.AbCdEf12.woff2',
      'office.js',
      'opening.js',
    ])
      expect(stageOf(file), file).toBe('base');
    for (const file of files.filter((each) =>
      /^(?:404|index|(?:about|place|guides|calculators|search)\/(?:[a-z]+\/)?index)\.(?:html|json)$/.test(each),
    ))
      if (!file.includes('working')) expect(stageOf(file), file).toBe('core');
    expect(stageOf('_astro/KaTeX_Fraktur-Bold.AbCdEf12.woff2')).toBe('rest');
    for (const file of [
      '_astro/working-season.AbCdEf12.js',
      'calculators/season/working/index.html',
      'sources/index.html',
      'sources/m/index.html',
      'sheets/x/index.html',
    ])
      expect(stageOf(file), file).toBe('rest');
    const order = choosePacks(files).map(({ stage }) => ['base', 'core', 'rest'].indexOf(stage));
    expect(order).toEqual(order.toSorted());
  });

  it('leaves a file in its pack when others come, go or change their hash', () => {
    const packOf = (all: readonly string[], file: string) => choosePacks(all).find((pack) => pack.files.includes(file))?.name;
    for (const file of files) {
      const fewer = files.filter((each) => each === file || each.length % 2 === 0);
      expect(packOf(fewer, file), file).toBe(packOf(files, file));
      const newer = file.replace('AbCdEf12', '9_-aZ-_x');
      expect(packOf([newer], newer), newer).toBe(packOf(files, file));
    }
  });
});

describe('the copy of a built site', () => {
  it('is the same bytes again, and another edition when a letter changes', () => {
    const first = aSite('one').copy;
    const again = aSite('one').copy;
    expect(again.worker).toBe(first.worker);
    expect([...again.packs]).toEqual([...first.packs]);
    const other = aSite('one', { 'guides/a/index.html': 'mended' }).copy;
    expect(other.index.edition).not.toBe(first.index.edition);
    expect([...other.packs.keys()].filter((file) => !first.packs.has(file))).toHaveLength(1);
  });

  it('counts its guides and calculators, not their lists and workings', () => {
    const { parts } = aSite('one').copy.index;
    expect(parts.reduce((sum, { guides }) => sum + guides, 0)).toBe(16);
    expect(parts.reduce((sum, { calculators }) => sum + calculators, 0)).toBe(8);
  });

  it('stops the build at a file of which nobody has said what it is', () => {
    expect(() => copyOf(['sheets/x.tiff'], () => bytesOf(''))).toThrow('sheets/x.tiff: what type this is must be told in');
  });
});
