import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { filesBelow, root } from '../support/files.ts';
import { attributesIn } from '../support/guideBlocks.ts';
import { guideTexts } from '../support/guideHeads.ts';

const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');
const sourceSchema = v.object({
  authors: v.array(v.string()),
  title: v.string(),
  year: v.string(),
  pages: v.optional(v.string()),
  url: v.optional(v.string()),
  copy: v.string(),
});
const sources = filesBelow('content/sources', /\.json$/).map((path) => ({
  key: basename(path, '.json'),
  ...v.parse(sourceSchema, JSON.parse(textOf(path))),
}));
const keys = new Set(sources.map(({ key }) => key));

/** Keys in quotes, in `@source` lines and in heads of guides; a place may follow: `tr55-1986, Table 2-2`. */
const keysNamedIn = (text: string): readonly string[] =>
  [...text.matchAll(/(?:['"`[,]\s*|@source )([a-z][a-z0-9]*(?:-[a-z0-9]+)*)(?=['"`\],;\s])/g)]
    .map((found) => found[1] ?? '')
    .filter((key) => keys.has(key));

const citing = [
  ...filesBelow('calculators', /\.ts$/),
  ...filesBelow('src', /\.(?:ts|astro)$/),
  ...filesBelow('content', /\.(?:mdx|ts|json)$/).filter((path) => !path.startsWith('content/sources/')),
];
const cited = new Set(citing.flatMap((path) => keysNamedIn(textOf(path))));

const alike = (nameOf: (source: (typeof sources)[number]) => string | undefined): readonly string[] =>
  [...Map.groupBy(sources, nameOf)]
    .filter(([name, group]) => name !== undefined && group.length > 1)
    .map(([name, group]) => `${name}: ${group.map(({ key }) => key).join(', ')}`);
const addressOf = (url: string): string =>
  url
    .replace(/^https?:\/\/(?:www\.)?/i, '')
    .replace(/\/$/, '')
    .toLowerCase();
const plain = (title: string): string =>
  title
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, ' ')
    .trim();

describe('sources', () => {
  it.each(guideTexts)('are there for each citation of $slug', ({ body, head }) => {
    const named = [...attributesIn(body, 'Cite', 'key'), ...head.sources];
    expect(body.match(/<Cite\b/g)?.length ?? 0).toBe(attributesIn(body, 'Cite', 'key').length);
    expect(named.filter((key) => !keys.has(key))).toEqual([]);
  });

  it('are each cited somewhere', () => {
    expect(sources.filter(({ key }) => !cited.has(key)).map(({ key }) => key)).toEqual([]);
    expect(keysNamedIn('no such words')).toEqual([]);
  });

  it('stand in one file each', () => {
    // A page may quote another publication's figures: that one says in `copy` where it was read, and is then no double of the page.
    expect(alike(({ url, copy }) => (url === undefined || /\bread (?:whole )?in (?:a|the)\b/i.test(copy) ? undefined : addressOf(url)))).toEqual([]);
    // Undated pages of different bodies may bear one plain title.
    const dateOf = ({ year, authors }: (typeof sources)[number]) => (year === 'n.d.' ? authors.join(' ') : year);
    expect(alike((source) => `${plain(source.title)} ${dateOf(source)} ${source.pages ?? ''}`)).toEqual([]);
  });
});
