import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  blankDraft,
  differing,
  draftFrom,
  officeOf,
  readTyped,
  seenBeside,
  valueAt,
  withTyped,
  withValue,
  wrongsIn,
} from '../../src/office/draft.ts';
import { officeSections } from '../../src/office/model/fields.ts';
import { readOfficeFile, writeOffice } from '../../src/office/model/officeFile.ts';
import { placedAt } from '../../src/office/model/placedAt.ts';
import type { Data } from '../../src/place/ui/edit.ts';
import { root } from '../support/files.ts';
import { anOffice } from './anOffice.ts';

const countries = readdirSync(join(root, 'content/local')).filter((file) => file.endsWith('.json') && file !== 'fields.json');
const today = '2026-09-14';
const named = (slug: string) => {
  const country: unknown = JSON.parse(readFileSync(join(root, 'content/local', slug), 'utf8'));
  return withValue(
    draftFrom(slug.replace('.json', ''), country, (key) => `words of ${key}`, today),
    'head.name',
    'Example County office',
  );
};
const fieldAt = (path: string) => {
  const field = placedAt(path)?.field;
  if (!field) throw new RangeError(`no field at ${path}`);
  return field;
};
const typed = (data: Parameters<typeof withValue>[0], texts: Readonly<Record<string, string>>) =>
  Object.entries(texts).reduce((now, [path, text]) => withTyped(now, path, readTyped(fieldAt(path), text)), data);

describe('an office at work', () => {
  it('needs no more than a name', () => {
    expect(wrongsIn(blankDraft(today)).map(({ at, label }) => `${at} ${label}`)).toEqual(['head.name Name']);
    expect(officeOf(withValue(blankDraft(today), 'head.name', 'Example County office'))).toBeDefined();
  });

  it.each(countries)('begun from %s can be saved as it is, with its sources in words, and be opened again', (file) => {
    const office = officeOf(named(file));
    expect(wrongsIn(named(file))).toEqual([]);
    if (!office) throw new Error(`${file} gives no office`);
    const text = writeOffice(office);
    expect(text).toContain('words of ');
    expect(readOfficeFile(text)).toEqual({ is: 'read', office });
  });

  it('opens its own file without a change', () => {
    expect(officeOf(JSON.parse(JSON.stringify(anOffice)))).toEqual(anOffice);
  });

  it('reads numbers as people type them, and keeps the rest as it was typed', () => {
    const price = fieldAt('values.hayPrice.likelyUsdPerTon');
    expect(['165', ' 165.50 ', '$1,200', '.5', 'abc', '12,5', '', '1e3', '0,180', '16,50', '12,345.5'].map((text) => readTyped(price, text))).toEqual(
      [165, 165.5, 1200, 0.5, 'abc', '12,5', undefined, '1e3', '0,180', '16,50', 12345.5],
    );
  });

  it('tells at the field what is wrong', () => {
    const data = typed(named('plains-range.json'), {
      'values.hayPrice.lowUsdPerTon': '120',
      'values.hayPrice.likelyUsdPerTon': '95',
      'values.growthCurve.curves.0.percentByMonth.4': '1',
    });
    // The day on which the new price was seen is asked for, and hides no other fault.
    expect(wrongsIn(data).map(({ at }) => at)).toEqual([
      'values.growthCurve.curves.0.percentByMonth',
      'values.hayPrice.seen',
      'values.hayPrice.likelyUsdPerTon',
    ]);
    expect(wrongsIn(data).at(-1)?.say).toBe('95 is under low (120). Low, likely, high in that order.');
    expect(officeOf(data)).toBeUndefined();
  });

  it('forgets where in its source a value stood once the values or the source are another', () => {
    const begun = named('plains-range.json');
    const from = (data: typeof begun) => officeOf(data)?.values;
    const before = from(begun);
    expect(before?.hayPrice?.at).toBeDefined();
    expect(before?.yields?.at).toBeDefined();
    expect(before?.erosivity?.also).toBeDefined();
    const curve = before?.growthCurve?.curves.findIndex(({ at }) => at !== undefined) ?? -1;
    expect(curve).toBeGreaterThanOrEqual(0);
    const after = from(
      typed(begun, {
        'values.hayPrice.likelyUsdPerTon': '111',
        'values.hayPrice.seen': '2026-11',
        'values.yields.source': 'common practice',
        'values.erosivity.says': 'the whole county',
        [`values.growthCurve.curves.${curve}.name`]: 'Bluestem, county farm',
      }),
    );
    expect(after?.hayPrice).toEqual({ ...before?.hayPrice, at: undefined, likelyUsdPerTon: 111, seen: '2026-11' });
    expect(after?.yields).toEqual({ ...before?.yields, at: undefined, source: 'common practice' });
    expect(after?.erosivity).toEqual({ ...before?.erosivity, at: undefined, also: undefined, says: 'the whole county' });
    expect(after?.growthCurve?.curves[curve]?.at).toBeUndefined();
    expect(after?.waterUse).toEqual(before?.waterUse);
    // What is typed again as it was is no change.
    expect(from(typed(begun, { 'values.hayPrice.likelyUsdPerTon': String(before?.hayPrice?.likelyUsdPerTon) }))).toEqual(before);
  });

  it('forgets when a value was seen once it is another, and asks for it', () => {
    const begun = withValue(JSON.parse(JSON.stringify(anOffice)), 'values.hayPrice.at', 'page 2');
    const seenAfter = (texts: Readonly<Record<string, string>>, was?: typeof begun) =>
      valueAt(
        Object.entries(texts).reduce((now, [path, text]) => withTyped(now, path, readTyped(fieldAt(path), text), was), begun),
        'values.hayPrice.seen',
      );
    for (const [path, text] of [
      ['values.hayPrice.likelyUsdPerTon', '170'],
      ['values.hayPrice.likelyUsdPerTon', 'abc'],
      ['values.hayPrice.crop', 'alfalfa'],
    ] as const)
      expect(seenAfter({ [path]: text }), path).toBeUndefined();
    for (const [path, text] of [
      ['values.hayPrice.likelyUsdPerTon', '165.0'],
      ['values.hayPrice.highUsdPerTon', ''],
      ['values.hayPrice.of', 'county auction'],
      ['values.hayPrice.source', 'county sheet'],
      ['values.freight.usdPerLoad', '500'],
    ] as const)
      expect(seenAfter({ [path]: text }), path).toBe('2026-09');
    expect(seenAfter({ 'values.hayPrice.likelyUsdPerTon': '170', 'values.hayPrice.seen': '2026-11', 'values.hayPrice.of': 'county' })).toBe(
      '2026-11',
    );
    const missing = typed(begun, { 'values.hayPrice.likelyUsdPerTon': '170' });
    expect(wrongsIn(missing).map(({ at, say }) => `${at} ${say}`)).toEqual([
      'values.hayPrice.seen This is missing; write a day, a month or a year, such as 2026-09.',
    ]);
    expect(
      ['freight.usdPerLoad', 'stockPrices.cowSaleUsd', 'yields.poorLbPerAc', 'stubble.rows.0.stopIn.1'].map((each) => seenBeside(`values.${each}`)),
    ).toEqual(['values.freight.seen', 'values.stockPrices.seen', undefined, undefined]);
  });

  it('gives back where and when a value was seen once it is again what it was', () => {
    const was = withValue(JSON.parse(JSON.stringify(anOffice)), 'values.hayPrice.at', 'page 2');
    const likely = 'values.hayPrice.likelyUsdPerTon';
    const hayAfter = (...texts: readonly (readonly [string, string])[]) =>
      valueAt(
        texts.reduce((now, [path, text]) => withTyped(now, path, readTyped(fieldAt(path), text), was), was),
        'values.hayPrice',
      );
    const hayPrice = valueAt(was, 'values.hayPrice');
    expect(hayAfter([likely, '16'], [likely, ''], [likely, '165'])).toEqual(hayPrice);
    expect(hayAfter([likely, '16'])).not.toHaveProperty('at');
    // Another day is told of the same number: where that stood was told of the old day.
    expect(hayAfter([likely, '16'], [likely, '165'], ['values.hayPrice.seen', '2026-11'])).not.toHaveProperty('at');
  });

  it('tells in which sections two works differ', () => {
    const one: Data = JSON.parse(JSON.stringify(anOffice));
    const other = typed(one, { 'values.hayPrice.seen': '2026-10', 'values.stubble.rows.0.stopIn.0': '4', 'values.waterUse.inPerDay.0': '0.01' });
    expect(differing(one, one)).toEqual([]);
    expect(differing(one, other)).toEqual(['Hay', 'Heights to start and to stop', 'Water that pasture uses']);
    // Neither an empty row nor an emptied field says anything.
    expect(differing(one, withValue(one, 'values.decisionDates.1', {}))).toEqual([]);
    expect(differing(one, typed(one, { 'values.yields.goodLbPerAc': '' }))).toEqual([]);
  });

  it.each([
    [
      'yields',
      { poorLbPerAc: '900', normalLbPerAc: '1,800', goodLbPerAc: '1,500' },
      'goodLbPerAc',
      '1500 is under normal (1800). Poor, normal, good',
    ],
    ['yields', { poorLbPerAc: '900', normalLbPerAc: '', goodLbPerAc: '800' }, 'goodLbPerAc', '800 is under poor (900). Poor, normal, good'],
    ['restDays', { fastDays: '60', slowDays: '45' }, 'slowDays', '45 is under fast growth (60). Fast growth, slow growth'],
    ['erosivity', { low: '60', likely: '80', high: '70' }, 'high', '70 is under likely (80). Low, likely, high'],
  ])('takes no %s in an order that cannot be', (section, texts, broken, say) => {
    const under = (each: Readonly<Record<string, string>>) =>
      Object.fromEntries(Object.entries(each).map(([key, text]) => [`values.${section}.${key}`, text]));
    const data = typed(named('plains-range.json'), under(texts));
    expect(wrongsIn(data).map((wrong) => [wrong.at, wrong.say])).toEqual([[`values.${section}.${broken}`, `${say} in that order.`]]);
    expect(officeOf(data)).toBeUndefined();
    expect(officeOf(typed(data, under({ [broken]: '' })))).toBeDefined();
  });

  it('asks for what a section lacks once it was begun, and forgets one that was emptied', () => {
    const begun = typed(withValue(blankDraft(today), 'head.name', 'Example County office'), { 'values.freight.usdPerLoad': '400' });
    expect(wrongsIn(begun).map(({ at }) => at)).toEqual(['values.freight.source', 'values.freight.of', 'values.freight.seen']);
    expect(wrongsIn(typed(begun, { 'values.freight.usdPerLoad': '' }))).toEqual([]);
  });

  it.each(countries)('begun from %s can skip each section: emptied field by field it is asked for no more', (file) => {
    for (const { at, fields, rows } of officeSections.filter((section) => section.at.startsWith('values.') && !section.at.includes('talk'))) {
      const begun = named(file);
      const emptied = rows
        ? withValue(begun, at, [])
        : fields.reduce((now, { at: field, kind }) => withTyped(now, `${at}.${field}`, kind === 'months' ? [] : undefined), begun);
      expect(wrongsIn(emptied), at).toEqual([]);
      const text = officeOf(emptied)?.values ?? {};
      expect(valueAt(JSON.parse(JSON.stringify(text)), at.replace('values.', '')) ?? [], at).toEqual([]);
    }
  });

  it('says nothing of a row in which nothing stands, and leaves it out of the file', () => {
    const lines = 'values.talkToSomeone.lines';
    const data = typed(withValue(withValue(blankDraft(today), 'head.name', 'a'), lines, [{}, {}]), {
      [`${lines}.1.who`]: 'County line',
      [`${lines}.1.reach`]: '555-0100',
      [`${lines}.1.hours`]: 'always',
      [`${lines}.1.source`]: 'common practice',
    });
    expect(wrongsIn(data)).toEqual([]);
    expect(officeOf(data)?.values.talkToSomeone.lines).toHaveLength(1);
    const wrong = typed(data, { [`${lines}.1.reach`]: 'ask' });
    expect(wrongsIn(wrong).map(({ at }) => at)).toEqual([`${lines}.1.reach`]);
  });

  it('cannot be without somebody near', () => {
    const data = typed(named('fescue-belt.json'), { 'values.talkToSomeone.near': '' });
    expect(wrongsIn(data).map(({ at }) => at)).toEqual(['values.talkToSomeone.near']);
  });

  it('has a field for every value that an office may give', () => {
    const known = new Set(officeSections.map(({ at }) => at));
    for (const key of Object.keys(anOffice.values))
      expect(
        [...known].some((at) => at.startsWith(`values.${key}`)),
        key,
      ).toBe(true);
  });
});
