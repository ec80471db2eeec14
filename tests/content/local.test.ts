import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { add } from '../../calculators/kit/wholes.ts';
import fieldsData from '../../content/local/fields.json' with { type: 'json' };
import { readCountry, sourcesNamedIn } from '../../content/local/readCountry.ts';
import { type CountryValues, countrySchema, fieldsSchema } from '../../content/local/schema.ts';
import { isLocalKey } from '../../src/local/localParts.ts';
import { calculatorOf } from '../support/catalog.ts';
import { filesBelow, root } from '../support/files.ts';
import { attributesIn } from '../support/guideBlocks.ts';
import { guideTexts } from '../support/guideHeads.ts';

const sources = new Set(filesBelow('content/sources', /\.json$/).map((path) => basename(path, '.json')));
const read = (file: string, data: unknown): CountryValues => readCountry(file, data, (key) => sources.has(key));
const files = filesBelow('content/local', /\.json$/).filter((path) => !path.endsWith('fields.json'));
const dataOf = (path: string): Record<string, unknown> => JSON.parse(readFileSync(join(root, path), 'utf8'));
const countries = files.map((path) => ({ file: basename(path), data: dataOf(path) }));

/** Paths of numbers that have no source beside or above them. */
function unsourced(data: unknown, path = '', isSourced = false): readonly string[] {
  if (typeof data === 'number') return isSourced ? [] : [path];
  if (typeof data !== 'object' || data === null) return [];
  const here = isSourced || 'source' in data;
  return Object.entries(data).flatMap(([key, value]) => unsourced(value, `${path}.${key}`, here));
}

describe('local values', () => {
  it('are there for six kinds of country', () => {
    expect(countries.map(({ file }) => file.replace('.json', ''))).toEqual([
      'fescue-belt',
      'humid-cool-season',
      'mediterranean-annual-range',
      'mountain-and-irrigated',
      'plains-range',
      'southern-warm-season',
    ]);
  });

  it.each(countries)('$file is whole, and each number has its source', ({ file, data }) => {
    const values = read(file, data);
    expect(unsourced(data)).toEqual([]);
    for (const { name, percentByMonth } of values.growthCurve.curves) expect(add(percentByMonth), name).toBe(100);
  });

  it('rests on memory in few places', () => {
    const named = countries.flatMap(({ data }) => sourcesNamedIn(data));
    expect(named.length).toBeGreaterThan(100);
    expect(named.filter((source) => source === 'from memory').length).toBeLessThanOrEqual(2);
  });

  // The normals sum to the year that the source prints beside them.
  it.each([
    ['plains-range.json', 17.81],
    ['mountain-and-irrigated.json', 19.96],
    ['humid-cool-season.json', 32.95],
    ['mediterranean-annual-range.json', 22.4],
  ])('%s copies its rain right', (file, printedIn) => {
    const rain = countries.filter((country) => country.file === file).map((country) => read(file, country.data).rainMonths);
    expect(Math.abs(add(rain[0]?.inches ?? []) - printedIn)).toBeLessThan(0.11);
  });

  it('are shown by guides under keys that there are', () => {
    const used = guideTexts.flatMap(({ body }) => attributesIn(body, 'Local', 'of'));
    expect(used.filter((key) => key !== 'talk-to-someone' && !isLocalKey(key))).toEqual([]);
  });
});

/** Both fields come from one row, at the same end: a low start over a high stop is no pair that anybody printed. */
const rowAndEnd = (path: string): string => path.replace(/\.(?:start|stop)In\./, ' end ');
const stubbleOf = (row: object) => ({ stubble: { rows: [{ forage: 'a', source: 'from memory', ...row }] } });

describe('what a country says', () => {
  const valuesOf = (slug: string): CountryValues => {
    const found = countries.find(({ file }) => file === `${slug}.json`);
    return read(`${slug}.json`, found?.data);
  };

  it('fills heights from one row, the high start with the high stop', () => {
    const { startHeightIn, stopHeightIn } = v.parse(fieldsSchema, fieldsData)['rest-and-moves'] ?? {};
    expect(startHeightIn).toBe('stubble.rows.0.startIn.1');
    expect(rowAndEnd(stopHeightIn ?? '')).toBe(rowAndEnd(startHeightIn ?? ''));
  });

  it('gives the same height to leave to every form that asks for one', () => {
    const fields = v.parse(fieldsSchema, fieldsData);
    const { stopHeightIn } = fields['rest-and-moves'] ?? {};
    expect(fields['days-of-grass']).toEqual({ stopHeightIn });
    expect(fields['forage-on-hand']).toEqual({ stubbleHeightIn: stopHeightIn });
  });
  // By forage: annual range is left by pounds an acre, and has no height.
  it.each([
    ['fescue-belt', 4],
    ['humid-cool-season', 4],
    ['mediterranean-annual-range', undefined],
    ['mountain-and-irrigated', 6],
    ['plains-range', 4],
    ['southern-warm-season', 2],
  ])('%s fills a height to leave, or none', (slug, heightIn) => {
    expect(valuesOf(slug).stubble.rows[0]?.stopIn?.[1]).toBe(heightIn);
  });

  // Missouri: 3 inches of stubble reduce trouble (Kenyon); the bottom two to four inches are the most toxic (Lory 2022).
  it('keeps stock off the bottom of fescue', () => {
    const fescues = countries.flatMap(({ file, data }) => read(file, data).stubble.rows.filter(({ forage }) => /fescue/i.test(forage)));
    expect(fescues.length).toBeGreaterThan(1);
    for (const { forage, stopIn } of fescues) expect(stopIn?.[0], forage).toBeGreaterThanOrEqual(/without the toxin/.test(forage) ? 3 : 4);
    expect(valuesOf('fescue-belt').stubble.rows[0]?.forage).toContain('Kentucky 31');
  });

  it('tells both sides of nitrogen on saved fescue, with their years, and whose caution the last one is', () => {
    const said = valuesOf('fescue-belt').decisionDates.filter(({ says }) => says.toLowerCase().includes('nitrogen'));
    for (const word of ['2019', '2022', '2024', '30 percent', '60 pounds', 'nitrate', 'toxin']) expect(said[0]?.says).toContain(word);
    expect(said[1]).toMatchObject({ source: 'common practice' });
    expect(said[1]?.says).toMatch(/^Our own caution/);
    expect(said).toHaveLength(2);
  });

  // Only years that a source calls a drought year, or that a soil survey rates as unfavorable, normal and favorable.
  it.each([
    ['fescue-belt', null, null, null],
    ['humid-cool-season', 6800, null, null],
    ['mediterranean-annual-range', null, null, null],
    ['mountain-and-irrigated', null, null, null],
    ['plains-range', 1400, 1800, 2000],
    ['southern-warm-season', null, null, null],
  ])('%s has yields of kinds of years or none', (slug, poorLbPerAc, normalLbPerAc, goodLbPerAc) => {
    expect(valuesOf(slug).yields).toMatchObject({ poorLbPerAc, normalLbPerAc, goodLbPerAc });
  });

  it('gives plains range no days of rest from another country', () => {
    expect(valuesOf('plains-range').restDays).toMatchObject({ fastDays: null, slowDays: null });
    expect(valuesOf('plains-range').restDays.source).not.toBe('uga-wait-to-graze');
  });

  it('has no height to start at that was a height to end the season with', () => {
    const rows = valuesOf('mountain-and-irrigated').stubble.rows;
    expect(rows.filter(({ source }) => source === 'irrigated-pasture-stubble')).toEqual([]);
  });
});

describe('a file that an office edits', () => {
  const [{ data } = { data: {} }] = countries;
  const parts = v.parse(countrySchema, data);

  it('must keep someone to talk to', () => {
    const without = Object.fromEntries(Object.entries(data).filter(([key]) => key !== 'talkToSomeone'));
    expect(Object.keys(without).length).toBe(Object.keys(data).length - 1);
    expect(() => read('ours.json', without)).toThrow(/content\/local\/ours\.json[\s\S]*talkToSomeone/);
    const line = { who: 'The county line', reach: 'ask at the office', hours: 'weekdays', source: 'common practice' };
    expect(() => read('ours.json', { ...data, talkToSomeone: { ...parts.talkToSomeone, lines: [line] } })).toThrow(
      /talkToSomeone\.lines\.0\.reach[\s\S]*a whole number to call/,
    );
    expect(() => read('ours.json', { ...data, talkToSomeone: { ...parts.talkToSomeone, near: '' } })).toThrow(/talkToSomeone\.near/);
  });

  it.each([
    [
      'a growth curve that sums to 97',
      { growthCurve: { curves: [{ name: 'a', source: 'from memory', percentByMonth: [0, 0, 0, 2, 40, 35, 10, 5, 5, 0, 0, 0] }], markers: [] } },
      /growthCurve\.curves\.0[\s\S]*100/,
    ],
    ['eleven months', { waterUse: { of: 'a', source: 'from memory', inPerDay: Array(11).fill(0.1) } }, /waterUse\.inPerDay[\s\S]*twelve months/],
    ['a date of another form', { decisionDates: [{ date: '30 June', says: 'a', source: 'from memory' }] }, /decisionDates\.0\.date[\s\S]*06-30/],
    ['a value without a source', { erosivity: { low: null, likely: 100, high: null, says: 'a' } }, /erosivity\.source/],
    [
      'prices out of order',
      { hayPrice: { crop: 'grass', of: 'a', source: 'from memory', seen: '2026', lowUsdPerTon: 200, likelyUsdPerTon: 100, highUsdPerTon: 300 } },
      /hayPrice[\s\S]*in that order/,
    ],
    [
      'a likely price above the high one',
      { hayPrice: { crop: 'grass', of: 'a', source: 'from memory', seen: '2026', lowUsdPerTon: null, likelyUsdPerTon: 301, highUsdPerTon: 300 } },
      /hayPrice[\s\S]*in that order/,
    ],
    [
      'a price of two kinds of hay',
      {
        hayPrice: {
          crop: 'alfalfa',
          of: 'grain hay, fair',
          source: 'from memory',
          seen: '2026',
          lowUsdPerTon: 1,
          likelyUsdPerTon: 2,
          highUsdPerTon: 3,
        },
      },
      /hayPrice\.of[\s\S]*one only/,
    ],
    ['a graze of less than two inches', stubbleOf({ startIn: [5.9, 8], stopIn: [4, 4] }), /stubble\.rows\.0[\s\S]*2 inches/],
    ['a graze of less than two inches at the high end', stubbleOf({ startIn: [6, 6], stopIn: [2, 4.1] }), /stubble\.rows\.0[\s\S]*2 inches/],
    ['a low start under a high stop', stubbleOf({ startIn: [4, 8], stopIn: [2, 4] }), /stubble\.rows\.0[\s\S]*2 inches/],
    ['a name that nobody knows', { rainfall: 30 }, /rainfall/],
    ['a source that is not there', { restDays: { source: 'no-such-source', fastDays: 1, slowDays: 2, says: 'a' } }, /no-such-source/],
  ])('is refused with its place: %s', (_, change, message) => {
    expect(() => read('ours.json', { ...data, ...change })).toThrow(message);
  });

  it('may say that a value is not known', () => {
    expect(read('ours.json', { ...data, rainMonths: null, yields: { ...parts.yields, poorLbPerAc: null } }).rainMonths).toBeNull();
  });
});

/** What a form has under a key, or in a column of it. */
function kindIn(slug: string, key: string): string | undefined {
  const [name = '', column] = key.split('.');
  const input = calculatorOf(slug).inputs[name];
  if (input?.kind !== 'rows') return column === undefined ? input?.kind : undefined;
  return column === undefined ? undefined : input.columns[column]?.kind;
}
describe('fields that local values can fill', () => {
  it.each(Object.entries(v.parse(fieldsSchema, fieldsData)))('of %s are of the kind of their value', (slug, paths) => {
    for (const [key, path] of Object.entries(paths)) {
      const kind = /Month$|fallFlush$/.test(path) ? 'choice' : /firstDay$/.test(path) ? 'date' : path === 'rainMedians.inches' ? 'months' : 'number';
      expect(kindIn(slug, key), `${slug} ${key}`).toBe(kind);
    }
  });
});
