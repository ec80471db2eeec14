import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type CopyIndex, countsOf } from '../../src/copy/copyIndex.ts';
import { inflate, splitFiles } from '../../src/copy/packFormat.ts';
import { addressOf, dist, filesOf, textOf } from './builtSite.ts';

const kB = 1000;
const [firstLine = ''] = textOf(dist, 'worker.js').split('\n', 1);
const index: CopyIndex = JSON.parse(/^const copyIndex=(\{.*\});$/.exec(firstLine)?.[1] ?? '{}');
const bytesOf = (file: string): Uint8Array<ArrayBuffer> => new Uint8Array(readFileSync(join(dist, file)));
const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
const packed = await Promise.all(index.parts.map(async (part) => ({ part, files: splitFiles(await inflate(bytesOf(part.file))) })));

describe('the copy for the phone', () => {
  it('holds every file of the site once, as it is, but for the worker, the office’s file, what is printed, and the pictures of the README, which no page shows', () => {
    const kept = packed.flatMap(({ files }) => files);
    const leftOut = /^\/(?:worker\.js|office\.css|(?:copy|pictures)\/.*|.*\.(?:pdf|zip|epub))$/;
    const wanted = filesOf(dist, /./).filter((file) => !leftOut.test(`/${file}`));
    expect(kept.map(({ path }) => `/${path}`).toSorted()).toEqual(wanted.map(addressOf).toSorted());
    const fileAt = new Map(wanted.map((file) => [addressOf(file).slice(1), file]));
    for (const { path, content, sha256: told } of kept) {
      const bytes = bytesOf(fileAt.get(path) ?? '');
      expect(sha256(content), path).toBe(sha256(bytes));
      expect(told, path).toBe(sha256(bytes));
    }
    expect(filesOf(dist, /\.html$/).filter((page) => textOf(dist, page).includes('/pictures/'))).toEqual([]);
  });

  it('weighs at most 1.7 MB for what comes first and 3.2 MB in all, in few packs that a cut line loses little of', () => {
    const sent = (parts: CopyIndex['parts']): number => parts.reduce((sum, { file }) => sum + bytesOf(file).length, 0);
    expect(sent(index.parts.filter(({ stage }) => stage !== 'rest'))).toBeLessThanOrEqual(1700 * kB);
    // With its first page that is the four megabytes of `content/guides/hosting-a-copy.mdx`.
    expect(sent(index.parts)).toBeLessThanOrEqual(3200 * kB);
    expect(index.parts.length).toBeGreaterThanOrEqual(20);
    expect(index.parts.length).toBeLessThanOrEqual(32);
    for (const { file } of index.parts) expect.soft(bytesOf(file).length, file).toBeLessThanOrEqual(200 * kB);
    expect(filesOf(dist, /\.pack$/).toSorted()).toEqual(index.parts.map(({ file }) => file).toSorted());
  });

  it('tells of each pack what it is', () => {
    for (const { part, files } of packed) {
      const bytes = bytesOf(part.file);
      expect([bytes.length, sha256(bytes)], part.file).toEqual([part.bytes, part.sha256]);
      expect(part.file).toContain(part.sha256.slice(0, 10));
      expect(part.roomBytes).toBeGreaterThanOrEqual(files.reduce((sum, { length }) => sum + length, 0));
    }
    const { guides, calculators } = countsOf(index.parts);
    expect(guides).toBe(filesOf(dist, /^guides\/[^/]+\/index\.html$/).length);
    expect(calculators).toBe(filesOf(dist, /^calculators\/[^/]+\/index\.html$/).length);
  });

  it('has all that a page of the core needs in its core: scripts and styles that it names, but for drawn workings', () => {
    const core = packed.filter(({ part }) => part.stage !== 'rest').flatMap(({ files }) => files.map(({ path }) => path));
    const has = new Set(core);
    const named = core
      .filter((path) => /(?:^|\/)$/.test(path))
      .flatMap((path) =>
        [...textOf(dist, `${path}index.html`).matchAll(/(?:src|href)="\/([^"]+\.(?:js|css|woff2))"/g)].map((found) => found[1] ?? ''),
      );
    expect(new Set(named).size).toBeGreaterThan(20);
    expect([...new Set(named)].filter((path) => !has.has(path))).toEqual(['office.css']);
    const chunks = filesOf(dist, /^_astro\/(?!working-).*\.js$/);
    expect(chunks.filter((file) => !has.has(file))).toEqual([]);
  });
});
