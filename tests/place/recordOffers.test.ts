import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import type { Input } from '../../calculators/kit/inputs.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { startTexts } from '../../calculators/kit/state.ts';
import { isoDay } from '../../calculators/units/printQuantity.ts';
import { readRows } from '../../src/place/form/readPlaces.ts';
import type { Place } from '../../src/place/model/place.ts';
import type { Row } from '../../src/place/model/row.ts';
import { recordOffers } from '../../src/place/offer/recordOffers.ts';
import { dayIn } from '../../src/place/record/days.ts';
import { planFrom, workedMoves } from '../../src/place/record/planFrom.ts';
import { openStore } from '../../src/place/store/openStore.ts';
import { rowKind } from '../../src/place/store/rowKind.ts';
import { calculatorOf } from '../support/catalog.ts';
import { allOffers, fillTexts } from './allOffers.ts';
import { aPlace } from './aPlace.ts';
import { aHeight, aMove, aRain } from './aRow.ts';

const today = dayIn('2026-06-20');
const opened = (slug: string, place: Place, rows: readonly Row[], pastureIds: readonly string[] = []) =>
  fillTexts(calculatorOf(slug), allOffers(place, today, { ids: pastureIds, record: recordOffers(place, rows, today) }), today);
const filled = (slug: string, place: Place, rows: readonly Row[], pastureIds: readonly string[] = []) => {
  const calculator = calculatorOf(slug);
  const form = opened(slug, place, rows, pastureIds);
  expect('outcome' in runTexts(calculator, form.texts, 'us'), form.said.join(' ')).toBe(true);
  return form;
};
const markOf = (form: ReturnType<typeof fillTexts>, at: string) => form.marks.find((mark) => mark.at === at);

describe('rain', () => {
  /** Half an inch on the first of each month, nothing on the others, read every day. */
  const daily = (from: string, to: string): readonly Row[] =>
    Array.from({ length: dayIn(to) - dayIn(from) + 1 }, (_, index) => {
      const day = isoDay(dayIn(from) + index);
      return aRain({ id: `r${day}`, day, amountIn: day.endsWith('-01') ? 0.5 : 0 });
    });
  // March, April, May and June to the 19th: four firsts of a month.
  it('so far goes into the dates to decide by, with the day since when and the days that nobody read', () => {
    const form = filled('decision-dates', aPlace(), daily('2026-01-01', '2026-06-19'));
    expect(form.texts['rainSoFarIn']).toBe('2\u00a0in');
    expect(markOf(form, 'rainSoFarIn')).toMatchObject({ offer: 'rain.soFar', says: 'since Mar 1, 2026, 1 day not read' });
  });
  it('so far is none before the first day that counts, whatever fell in the year before', () => {
    const rows = daily('2025-03-01', '2026-02-28');
    const soFar = (iso: string) => recordOffers(aPlace(), rows, dayIn(iso)).single.get('rain.soFar');
    expect(soFar('2026-02-28')).toEqual({ amount: 0, says: 'counted from Mar 1, 2026' });
    // To the last day of the season before it, eight firsts of a month; then the next one is planned.
    expect(soFar('2025-10-31')).toMatchObject({ amount: 4, says: 'since Mar 1, 2025' });
    expect(soFar('2025-11-01')).toEqual({ amount: 0, says: 'counted from Mar 1, 2026' });
  });
  it('so far counts from the month that a fresh form counts from', () => {
    const input: Input | undefined = calculatorOf('decision-dates').inputs['sinceMonth'];
    expect(input).toMatchObject({ default: 'mar' });
  });
  it('so far is not offered where a tenth of the days was not read', () => {
    const rows = daily('2026-03-20', '2026-06-19');
    expect(recordOffers(aPlace(), rows, today).single.has('rain.soFar')).toBe(false);
    expect(recordOffers(aPlace(), daily('2026-03-05', '2026-06-19'), today).single.has('rain.soFar')).toBe(true);
  });
  it('goes as a record into the forms that read one, up to its last day, and is not asked about again', () => {
    const form = filled('rain-record', aPlace(), daily('2017-01-01', '2026-06-19'));
    expect(String(form.texts['rainRecord']).split('\n')[0]).toBe('#= unit=in; unlisted=not-read; confirmed=yes');
    expect(form.texts['untilDay']).toBe('2026-06-19');
  });
  it('is compared with from ten years on', () => {
    expect(recordOffers(aPlace(), daily('2018-01-01', '2026-06-19'), today).single.has('rain.record')).toBe(false);
    expect(recordOffers(aPlace(), daily('2017-01-01', '2026-06-19'), today).single.get('rain.from')).toEqual({ words: ['record'] });
  });
  it('of the last six months is laid against the medians of the place, up to the last reading', () => {
    const place = aPlace({ stationMonthsIn: [1, 1, 2, 3, 4, 5, 3, 2, 3, 2.5, 2, 1] });
    // The six firsts of a month from January to June; a day of them was not read.
    const rows = daily('2025-06-01', '2026-06-19').filter((row) => !('day' in row && row.day === '2026-05-05'));
    const form = filled('rain-record', place, rows);
    expect(form.texts).toMatchObject({ compareWith: 'medians', untilDay: '2026-06-19', ownRainIn: '3\u00a0in' });
    expect(markOf(form, 'ownRainIn')?.says).toBe('Dec 20, 2025 to Jun 19, 2026, 1 day not read');
    // So many months a fresh form looks back.
    expect(form.texts['windowMonths']).toBe('6\u00a0mo');
  });
  it('that the record does not tell is asked for, and never the example’s over the medians of the place', () => {
    const place = aPlace({ stationMonthsIn: [1, 1, 2, 3, 4, 5, 3, 2, 3, 2.5, 2, 1] });
    // Nothing read, and too little of the six months.
    for (const rows of [[], daily('2026-03-01', '2026-06-19')]) {
      const form = opened('rain-record', place, rows);
      expect(form.texts).toMatchObject({ compareWith: 'medians', untilDay: '2026-06-20', ownRainIn: '' });
      expect(form.toBeTold).toEqual(['ownRainIn']);
      expect(form.said).toEqual([]);
      expect(runTexts(calculatorOf('rain-record'), form.texts)).toMatchObject({ refusals: [{ at: 'ownRainIn' }] });
    }
    // Without medians of the place all of it is the example, and is told as that.
    const start = startTexts(calculatorOf('rain-record').inputs);
    const { compareWith, untilDay, ownRainIn } = filled('rain-record', aPlace(), daily('2025-06-01', '2026-06-19')).texts;
    expect([compareWith, untilDay, ownRainIn]).toEqual([start['compareWith'], start['untilDay'], start['ownRainIn']]);
    // A record that is long enough goes before the medians.
    expect(filled('rain-record', place, daily('2017-01-01', '2026-06-19')).texts['compareWith']).toBe('record');
  });
  it('lends its years to a form that runs through them where six hay years lie in whole calendar years', () => {
    const words = (rows: readonly Row[]) => recordOffers(aPlace(), rows, today).single.get('rain.yearsFrom');
    const all = daily('2010-12-31', '2020-01-01');
    expect(words(all)).toEqual({ words: ['record'] });
    // Eleven calendar years, of which seven stand in a row, then six.
    const withGapIn = (...years: readonly string[]) => all.filter((row) => !years.some((year) => 'day' in row && row.day === `${year}-05-05`));
    expect(words(withGapIn('2011', '2012'))).toEqual({ words: ['record'] });
    expect(words(withGapIn('2011', '2012', '2013'))).toBeUndefined();
    // Nine calendar years hold eight hay years, but a form would not be lent so short a record.
    expect(words(daily('2011-01-01', '2019-12-31'))).toBeUndefined();
    const form = filled('season', aPlace(), all);
    expect(form.texts['weatherFrom']).toBe('record');
    expect(String(form.texts['rainRecord'])).toContain('2010-12-31');
  });
  it('of the last reading goes on the ground, with its day; a dry one does not', () => {
    const form = filled('rain-on-ground', aPlace(), [aRain()]);
    expect(form.texts['rainIn']).toBe('0.5\u00a0in');
    expect(markOf(form, 'rainIn')?.says).toBe('read May 4, 2026');
    expect(recordOffers(aPlace(), [aRain({ amountIn: 0 })], today).single.has('rain.lastReading')).toBe(false);
  });
});

describe('two heights of a paddock at rest', () => {
  const rows = [
    aMove({ outDay: '2026-06-01' }),
    aHeight({ day: '2026-06-05', heightIn: 4 }),
    aHeight({ id: 'h2', day: '2026-06-15', heightIn: 5.5 }),
  ];
  it('go into rests and moves as the growth that was measured', () => {
    const form = filled('rest-and-moves', aPlace(), rows);
    expect(['growthFrom', 'firstHeightIn', 'secondHeightIn', 'betweenDays'].map((key) => form.texts[key])).toEqual([
      'heights',
      '4\u00a0in',
      '5.5\u00a0in',
      '10\u00a0d',
    ]);
    expect(markOf(form, 'secondHeightIn')?.says).toBe('Low bench, Jun 15, 2026');
  });
  it('of another pasture than the chosen one do not, nor from before they went out, nor where stock stand', () => {
    expect(filled('rest-and-moves', aPlace(), rows, ['high']).texts['growthFrom']).toBe('known');
    for (const others of [[aMove({ outDay: '2026-06-10' }), ...rows.slice(1)], [aMove(), ...rows.slice(1)], rows.slice(0, 2)])
      expect(filled('rest-and-moves', aPlace(), others).texts['growthFrom']).toBe('known');
  });
});

describe('what whole years fed', () => {
  const place = aPlace({ season: { turnInDay: '04-20' }, yardstickLbPerDay: 30 });
  // 45 cows of 30 lb for 20 and 30 days: 25 days in the mean. None on High bench.
  const rows = [
    aMove({ inDay: '2024-04-25', outDay: '2024-05-15' }),
    aMove({ id: 'm2', inDay: '2025-05-01', outDay: '2025-05-31' }),
    aMove({ id: 'm3' }),
  ];
  it('goes into the carrying capacity, pasture by pasture, in head of the yardstick', () => {
    const form = filled('carrying-capacity', place, rows);
    expect(form.texts['yieldFrom']).toBe('stock-days');
    expect(form.texts['usualEatenLbPerDay']).toBe('30\u00a0lb/d');
    expect(form.texts['pastures']).toMatchObject([
      { usualHead: '45', lastedDays: '25\u00a0d' },
      { usualHead: '0', lastedDays: '0\u00a0d' },
    ]);
  });
  // 20 days in the one year, and 10 in the other of a stay that went on into this one: 15 in the mean.
  it('counts of a stay over New Year the days of the whole years alone', () => {
    const winter = [...rows.slice(0, 1), aMove({ id: 'm4', inDay: '2025-12-22', outDay: '2026-01-11' }), ...rows.slice(2)];
    expect(filled('carrying-capacity', place, winter).texts['pastures']).toMatchObject([{ usualHead: '45', lastedDays: '15\u00a0d' }, {}]);
  });
  it('is not offered from a year that is not over, or where a stay cannot be counted, nor instead of yields that are known', () => {
    expect(recordOffers(place, rows.slice(2), today).single.has('pastures.yieldFrom')).toBe(false);
    const unknown = [aMove({ inDay: '2024-04-25', outDay: '2024-05-15', stock: [] }), ...rows.slice(1)];
    expect(recordOffers(place, unknown, today).single.has('pastures.yieldFrom')).toBe(false);
    const known = { ...place, pastures: place.pastures.map((each) => ({ ...each, normalLbPerAc: 2000 })) };
    expect(recordOffers(known, rows, today).single.has('pastures.yieldFrom')).toBe(false);
  });
});

it('a form finds the lines that the store has kept for its place, and none of another', async () => {
  globalThis.indexedDB = new IDBFactory();
  expect(await readRows('p1')).toEqual([]);
  const store = await openStore({ by: 'this window', texts: undefined });
  await store.save(
    rowKind,
    [aMove(), aRain({ placeId: 'other' })].map((after) => ({ before: null, after })),
  );
  store.close();
  expect(await readRows('p1')).toEqual([aMove()]);
});

describe('moves that a form worked out', () => {
  const moves = [
    { paddock: 1, herd: 1, inDay: today, outDay: today + 4, lookDay: today - 3 },
    { paddock: 2, herd: 1, inDay: today + 4, outDay: today + 8, lookDay: today + 1 },
  ];
  it('become the plan, paddock by paddock in the order of the place', () => {
    expect(planFrom(aPlace(), [], workedMoves({ moves }))).toMatchObject([
      { is: 'plan', paddockId: 'low', herdNumber: 1, inDay: '2026-06-20', outDay: '2026-06-24', lookDay: '2026-06-17' },
      { paddockId: 'high', inDay: '2026-06-24' },
    ]);
  });
  it('make no plan where the place has fewer paddocks, and say how many', () => {
    expect(planFrom(aPlace(), ['low'], moves)).toEqual({ has: 1, needs: 2 });
  });
  it('are those of rests and moves as it stands, and of no form that has none', () => {
    const results = (slug: string) => {
      const run = runTexts(calculatorOf(slug), fillTexts(calculatorOf(slug), allOffers(aPlace(), today), today).texts, 'us');
      return 'outcome' in run ? workedMoves(run.outcome.values) : [];
    };
    expect(results('rest-and-moves').length).toBeGreaterThan(7);
    expect(results('rain-on-ground')).toEqual([]);
  });
});
