import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import type { Calculator } from '../../calculators/kit/define.ts';
import fieldsData from '../../content/local/fields.json' with { type: 'json' };
import { readCountry, sourcesNamedIn } from '../../content/local/readCountry.ts';
import { type CountryValues, countrySchema, fieldsSchema } from '../../content/local/schema.ts';
import { isLocalKey } from '../../src/localParts.ts';
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
const sumOf = (months: readonly number[]): number => months.reduce((sum, each) => sum + each, 0);

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
    for (const { name, percentByMonth } of values.growthCurve.curves) expect(sumOf(percentByMonth), name).toBe(100);
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
    expect(Math.abs(sumOf(rain[0]?.inches ?? []) - printedIn)).toBeLessThan(0.11);
  });

  it('are shown by guides under keys that there are', () => {
    const used = guideTexts.flatMap(({ body }) => attributesIn(body, 'Local', 'of'));
    expect(used.filter((key) => key !== 'talk-to-someone' && !isLocalKey(key))).toEqual([]);
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
      /talkToSomeone\.lines\.0\.reach[\s\S]*a number to call/,
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
      { hayPrice: { of: 'a', source: 'from memory', seen: '2026', lowUsdPerTon: 200, likelyUsdPerTon: 100, highUsdPerTon: 300 } },
      /hayPrice[\s\S]*in that order/,
    ],
    ['a name that nobody knows', { rainfall: 30 }, /rainfall/],
    ['a source that is not there', { restDays: { source: 'no-such-source', fastDays: 1, slowDays: 2, says: 'a' } }, /no-such-source/],
  ])('is refused with its place: %s', (_, change, message) => {
    expect(() => read('ours.json', { ...data, ...change })).toThrow(message);
  });

  it('may say that a value is not known', () => {
    expect(read('ours.json', { ...data, rainMonths: null, yields: { ...parts.yields, poorLbPerAc: null } }).rainMonths).toBeNull();
  });
});

describe('fields that local values can fill', () => {
  const loaders = import.meta.glob<{ default: Calculator }>('../../calculators/catalog/*/definition.ts', { eager: true });
  const inputsOf = (slug: string) => loaders[`../../calculators/catalog/${slug}/definition.ts`]?.default.inputs ?? {};
  it.each(Object.entries(v.parse(fieldsSchema, fieldsData)))('of %s are numbers in its form', (slug, paths) => {
    for (const key of Object.keys(paths)) expect(inputsOf(slug)[key]?.kind, `${slug} ${key}`).toBe('number');
  });
});
