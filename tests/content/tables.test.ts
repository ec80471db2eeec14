import { readFileSync } from 'node:fs';
import { basename, dirname, join, posix } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { endOf, printCell } from '../../content/tables/table.ts';
import { columnAt, referenceTables, rowOf, tableNamed } from '../../content/tables/tables.ts';
import { filesBelow, root } from '../support/files.ts';
import { attributesIn } from '../support/guideBlocks.ts';
import { guideTexts } from '../support/guideHeads.ts';

/** Files of `calculators/tables` that readers don't see as a table, and why. */
const internal: Readonly<Record<string, string>> = {
  grazers: 'weights that only start a field of a form',
  pastureWaterUse: 'two figures of the table of forage coefficients',
  textureCenters: 'a point in the texture triangle that stands in for a laboratory slip',
  yieldBasis: 'two words for the water in a pound, which the form about carrying capacity tells with its own options',
};

const sources = new Set(filesBelow('content/sources', /\.json$/).map((path) => basename(path, '.json')));
const files = filesBelow('calculators/tables', /\.ts$/).map((path) => basename(path, '.ts'));
const slugs = referenceTables.map(({ slug }) => slug);
const repeated = (all: readonly string[]): readonly string[] => all.filter((each, index) => all.indexOf(each) !== index);

const importsOf = (path: string): readonly string[] =>
  ts
    .preProcessFile(readFileSync(join(root, path), 'utf8').replaceAll(/^import type .*$/gm, ''), true, true)
    .importedFiles.map(({ fileName }) => posix.normalize(posix.join(dirname(path), fileName)))
    .filter((found) => found.endsWith('.ts'));
/** Every file that a file draws in, itself too; a type alone brings no numbers. */
function drawnInBy(path: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(path)) return seen;
  seen.add(path);
  for (const next of importsOf(path)) drawnInBy(next, seen);
  return seen;
}
const definitions = new Map(filesBelow('calculators/catalog', /^definition\.ts$/).map((path) => [basename(dirname(path)), drawnInBy(path)] as const));
const restingOn = (file: string): readonly string[] =>
  [...definitions].filter(([, drawn]) => drawn.has(`calculators/tables/${file}.ts`)).map(([slug]) => slug);

describe('published tables', () => {
  it('are shown to readers, or named here with the reason why not', () => {
    const shown = new Set(referenceTables.map(({ file }) => file));
    expect(files.filter((file) => !shown.has(file) && !(file in internal))).toEqual([]);
    expect(Object.keys(internal).filter((file) => shown.has(file) || !files.includes(file))).toEqual([]);
    expect(repeated(slugs)).toEqual([]);
  });

  it.each(referenceTables)('$slug reads a value from each column, and none that is not finite', ({ columns, rows }) => {
    expect(rows.length).toBeGreaterThan(0);
    expect(repeated(columns.map(({ key }) => key))).toEqual([]);
    expect(repeated(rows.map(({ key }) => key))).toEqual([]);
    columns.forEach((column, index) => {
      const cells = rows.map((row) => row.cells[index]);
      expect(cells, column.key).not.toContain(undefined);
      expect(
        cells.some((cell) => cell !== null && cell !== ''),
        column.key,
      ).toBe(true);
      const numbers = cells.flat().filter((each) => typeof each === 'number');
      expect(
        numbers.filter((each) => !Number.isFinite(each)),
        column.key,
      ).toEqual([]);
    });
    for (const { name, key } of rows) expect(`${name} ${key}`).not.toMatch(/undefined|NaN|Infinity/);
  });

  it.each(referenceTables)('$slug names a source for each row that there is', ({ rows }) => {
    expect(rows.filter(({ source, where }) => !sources.has(source) || where === '').map(({ key }) => key)).toEqual([]);
  });

  it.each(referenceTables)('$slug leads to the calculators that rest on it', ({ file, calculators }) => {
    const able = restingOn(file);
    expect(calculators.filter((slug) => !able.includes(slug))).toEqual([]);
    const shown = referenceTables.filter((table) => table.file === file).flatMap((table) => table.calculators);
    expect(able.length > 0).toBe(shown.length > 0);
  });

  it('that can hurt say so before their numbers', () => {
    const harmful = referenceTables.filter(({ file }) => ['feedHazards', 'prussicRules', 'feedCrops', 'forageHeights'].includes(file));
    expect(harmful.length).toBeGreaterThan(6);
    expect(harmful.filter(({ caution }) => caution === undefined).map(({ slug }) => slug)).toEqual([]);
    // A word that lets pass stands only where it is quoted with its limit.
    const lets = harmful.flatMap(({ rows }) => rows.map(({ name }) => name)).filter((name) => /\b(?:safe|no harm|no effect|excellent)\b/i.test(name));
    expect(lets.filter((name) => !/^(?:[\w ]+: )?“.*\b(?:limited|limit|caution)\b/i.test(name))).toEqual([]);
  });

  it.each(guideTexts)('are there for what $slug shows of them', ({ body }) => {
    for (const [tag] of body.matchAll(/<Tabled?\s[^>]*>/g)) {
      const keysOf = (attribute: string) =>
        attributesIn(tag, tag.startsWith('<Tabled') ? 'Tabled' : 'Table', attribute).flatMap((keys) => keys.split(' '));
      for (const table of keysOf('of').map(tableNamed)) {
        for (const key of [...keysOf('row'), ...keysOf('rows')]) rowOf(table, key);
        for (const key of [...keysOf('column'), ...keysOf('columns')]) columnAt(table, key);
        for (const end of keysOf('end')) expect(['low', 'high'], tag).toContain(end);
      }
    }
  });
});

/** A value as the page of a table shows it. */
const shownAt = (slug: string, row: string, column: string): string => {
  const table = tableNamed(slug);
  return printCell(rowOf(table, row).cells[columnAt(table, column)] ?? null);
};

describe('a page of a table', () => {
  // As the publications print them, from memory of them: what is proved here is that rows and columns are not exchanged.
  it.each([
    ['curve-numbers-pasture', 'pasture-fair', 'c', '79', 'tr55-1986, table 2-2c'],
    ['curve-numbers-range', 'sagebrush-good', 'b', '35', 'tr55-1986, table 2-2d'],
    ['curve-numbers-range', 'herbaceous-poor', 'a', '–', 'tr55-1986, table 2-2d, which has no number there'],
    ['pasture-cover-factors', 'none-grass', '40', '0.1', 'scs-agronomy-note-50-1982, table 1'],
    ['forage-heights', 'tall-fescue', 'stop', '4', 'tate-2020, heights in the text'],
    ['forage-heights', 'tall-fescue-uga-wait-to-graze', 'stop', '2 to 3', 'uga-wait-to-graze, table 1'],
    ['stock-water', 'cow-dry', '90', '14.5', 'gould-fs1090, after Guyer'],
    ['hay-storage-loss', 'ground-uncovered', 'months-18', '15 to 50', 'huhnke-bae1716, table 2'],
    ['animal-units', 'bull', 'units', '1.35', 'nrph-2003, chapter 6'],
    ['infiltration-classes', 'very-rapid', 'rate', 'over 20', 'usepa-1981-permeability'],
    ['soil-loss-tolerance', 'deeper', 'renewable', '5', 'mccormack-young-1981, from memory'],
  ])('of %s has at %s, %s what its source prints', (slug, row, column, printed) => {
    expect(shownAt(slug, row, column)).toBe(printed);
  });

  it('gives one end of a range, and none of what is no range', () => {
    expect([endOf([2, 3], 'low'), endOf([2, 3], 'high'), endOf([2, 3], undefined)]).toEqual([2, 3, [2, 3]]);
    expect([endOf(4, 'low'), endOf('over', 'high'), endOf(null, 'low')]).toEqual([null, null, null]);
  });

  it('stops the build at a table, row or column that there is not', () => {
    expect(() => tableNamed('none')).toThrow(/no table "none"/);
    expect(() => shownAt('forage-heights', 'none', 'stop')).toThrow(/no row "none"; it has .*tall-fescue/);
    expect(() => shownAt('forage-heights', 'tall-fescue', 'none')).toThrow(/no column "none"; it has start, stop, rest/);
  });
});
