import { basename } from 'node:path';
import { type HTMLElement, parse } from 'node-html-parser';
import { describe, expect, it } from 'vitest';
import { filesBelow } from '../support/files.ts';
import { addressOf, dist, filesOf, sentBytes, textOf } from './builtSite.ts';

const kB = 1000;
const list = parse(textOf(dist, 'sources/index.html'));
const lines = list.querySelectorAll('.sources > li');
const addressIn = (link: HTMLElement | null | undefined): string => link?.getAttribute('href') ?? '';
/** In the order of the list. */
const letters = [...new Set(lines.map((line) => addressIn(line.querySelector('a')).replace(/#.*/, '')))];
const fileAt = (address: string): string => `${address.slice(1)}index.html`;
const pages = new Map(letters.map((address) => [address, parse(textOf(dist, fileAt(address)))]));
const elementsIn = (file: string): number => textOf(dist, file).match(/<[a-z]/g)?.length ?? 0;

describe('the sources', () => {
  it('have each a line in the list, where old links land, and behind it the whole entry', () => {
    const keys = filesBelow('content/sources', /\.json$/).map((path) => basename(path, '.json'));
    expect(lines.map(({ id }) => id).toSorted()).toEqual(keys.toSorted());
    expect([...pages.values()].flatMap((page) => page.querySelectorAll('.sources > li')).map(({ id }) => id)).toEqual(lines.map(({ id }) => id));
    for (const line of lines) {
      const [page = '', key] = addressIn(line.querySelector('a')).split('#');
      expect(key).toBe(line.id);
      const entry = pages.get(page)?.querySelector(`li[id="${line.id}"]`);
      expect(entry?.querySelector('p')?.text.replace(/\s+/g, ' ').trim(), line.id).toContain(line.text.trim());
      // Which copy was read, and what rests on it: of no source is either left untold.
      expect(entry?.querySelector('.muted')?.text, line.id).toMatch(/\w/);
    }
    expect(list.querySelectorAll('.sources :is(.muted, .used, .printed-address)')).toEqual([]);
  });

  it('lead from letter to letter and back to the list', () => {
    expect(letters.length).toBeGreaterThan(20);
    expect(letters.toSorted()).toEqual(filesOf(dist, /^sources\/[^/]+\/index\.html$/).map(addressOf));
    letters.forEach((address, at) => {
      const ways = pages.get(address)?.querySelectorAll('.other-letters a').map(addressIn);
      expect(ways, address).toEqual([...letters.slice(Math.max(0, at - 1), at), ...letters.slice(at + 1, at + 2), '/sources/']);
    });
  });

  it('are light enough for a slow phone, the list and each letter', () => {
    expect(sentBytes(dist, 'sources/index.html')).toBeLessThanOrEqual(55 * kB);
    expect(elementsIn('sources/index.html')).toBeLessThan(2000);
    for (const file of letters.map(fileAt)) {
      expect.soft(sentBytes(dist, file), file).toBeLessThanOrEqual(20 * kB);
      expect.soft(elementsIn(file), file).toBeLessThan(1200);
    }
  });
});
