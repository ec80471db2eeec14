import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { Cite } from '@citation-js/core';
import { describe, expect, it } from 'vitest';
import { itemOf, type KeyedSource, referenceFile, type Source } from '../../src/sources/referenceFiles.ts';
import { filesBelow, root } from '../support/files.ts';

const isSource = (data: unknown): data is Source => typeof data === 'object' && data !== null && 'kind' in data && 'copy' in data;
const sources: readonly KeyedSource[] = filesBelow('content/sources', /\.json$/).map((path) => {
  const data: unknown = JSON.parse(readFileSync(join(root, path), 'utf8'));
  if (!isSource(data)) throw new TypeError(path);
  return { id: basename(path, '.json'), data };
});
const source = (data: Partial<Source>): KeyedSource => ({
  id: 'some-2001',
  data: { kind: 'article', authors: ['Some, A. B.'], year: '2001', title: 'Grass', copy: 'Read whole.', ...data },
});
/** The tags of one record of a RIS file, in the order of the file. */
const tagsOf = (record: string): readonly (readonly [string, string])[] =>
  record
    .trim()
    .split('\n')
    .map((line) => [line.slice(0, 2), line.slice(6)]);

describe('BibTeX of every source', () => {
  const file = referenceFile(sources, 'bib');
  const entries = file.split(/(?<=^\})\n/m).filter((entry) => entry.trim() !== '');

  it('is one entry a source, under its own key', () => {
    expect(entries.map((entry) => /^@(\w+)\{([^,]+),$/m.exec(entry)?.[2])).toEqual(sources.map(({ id }) => id));
  });

  it('closes every brace and leaves no sign that TeX would take for a command', () => {
    for (const entry of entries) {
      const bare = entry.replace(/\\[%&#$_]/g, '');
      expect(bare.match(/\{/g)?.length, entry).toBe(bare.match(/\}/g)?.length);
      for (const line of bare.split('\n').filter((each) => !/^\s(url|howpublished|doi) = /.test(each))) expect(line, entry).not.toMatch(/[%&#$_^~]/);
    }
  });

  // The reader of another list of names and titles: what is written must come back as it was.
  it('is read back with the same names, titles and years', () => {
    const plain = (text: string | undefined): string => (text ?? '').replace(/<\/?span[^>]*>/g, '');
    const back = new Map(new Cite(file).data.map((item) => [item.id, item]));
    for (const each of sources) {
      const { title, author, editor, issued } = itemOf(each);
      const found = back.get(each.id);
      expect(plain(found?.title)).toBe(title);
      expect(found?.author?.length).toBe(author?.length);
      expect(found?.editor?.length).toBe(editor?.length);
      expect(found?.issued?.['date-parts'][0]?.[0]).toBe(issued?.['date-parts'][0]?.[0]);
    }
  });
});

describe('RIS of every source', () => {
  const records = referenceFile(sources, 'ris')
    .split(/^ER {2}- ?\n/m)
    .filter((record) => record.trim() !== '');

  it('is one record a source, each line a tag', () => {
    expect(records).toHaveLength(sources.length);
    for (const line of records
      .join('')
      .trim()
      .split('\n')
      .filter((each) => each !== ''))
      expect(line).toMatch(/^[A-Z][A-Z0-9] {2}- \S/);
  });

  it('holds title and address whole, on one line', () => {
    records.forEach((record, index) => {
      const tags = new Map(tagsOf(record));
      expect([tags.get('TI'), tags.get('UR')]).toEqual([sources[index]?.data.title, sources[index]?.data.url]);
    });
  });
});

describe('a citation', () => {
  it('tells a body from a person and an editor from an author', () => {
    const { author, editor } = itemOf(source({ authors: ['Ball, D. M.', 'Law Supply, Inc.', 'Hoveland, C. S. (ed.)'] }));
    expect(author).toEqual([{ family: 'Ball', given: 'D. M.' }, { literal: 'Law Supply, Inc.' }]);
    expect(editor).toEqual([{ family: 'Hoveland', given: 'C. S.' }]);
  });

  it.each([
    ['Ecological Applications 2(4)', { 'container-title': 'Ecological Applications', volume: '2', issue: '4' }],
    ['Journal of Animal Science, 81', { 'container-title': 'Journal of Animal Science', volume: '81' }],
    ['Nebraska Farmer, 4 August 2014', { 'container-title': 'Nebraska Farmer, 4 August 2014' }],
  ])('of an article in %s takes the journal apart', (container, parts) => {
    expect(itemOf(source({ container }))).toMatchObject(parts);
  });

  it('has no year where the work has none, and no letter of ours', () => {
    expect(itemOf(source({ year: 'n.d.' })).issued).toBeUndefined();
    expect(itemOf(source({ year: '2015a' })).issued).toEqual({ 'date-parts': [[2015]] });
  });

  it('is written so that TeX prints it', () => {
    const file = referenceFile([source({ title: 'Cows & calves: 50% of {hay}_1' })], 'bib');
    expect(file).toContain('\\&');
    expect(file).toContain('50\\%');
    expect(file).toContain('\\textbraceleft{}hay\\textbraceright{}\\textunderscore{}1');
  });
});
