import { describe, expect, it } from 'vitest';
import { isoDay } from '../../calculators/units/printQuantity.ts';
import type { Place } from '../../src/place/model/place.ts';
import { dayIn } from '../../src/place/record/days.ts';
import { nextReady, slowRestDays } from '../../src/place/record/nextReady.ts';
import { aPlace, withPasture } from './aPlace.ts';
import { today } from './aRecord.ts';
import { aHeight, aMove } from './aRow.ts';

// What is expected was worked out by hand on a calendar and with a pencil: common practice.

describe('the next paddock', () => {
  const place = (more = {}) => withPasture(aPlace({ grazing: { restDays: 40 } }), 'low', { startHeightIn: 8, ...more });
  const out = (outDay: string) => aMove({ outDay });
  it('is ready the wanted rest after they went out, with a look three days before', () => {
    // May 8 and 40 days: June 17, so ready today; from May 20 on June 29.
    const ready = nextReady(place(), [out('2026-05-08'), aMove({ id: 'm2', paddockId: 'high', outDay: '2026-05-20' })], today);
    expect(
      ready.map(({ ground, from, readyDay, lookDay, restedDays }) => [
        ground.id,
        from,
        readyDay && isoDay(readyDay),
        lookDay && isoDay(lookDay),
        restedDays,
      ]),
    ).toEqual([
      ['low', 'rest', '2026-06-20', '2026-06-20', 43],
      ['high', 'rest', '2026-06-29', '2026-06-26', 31],
    ]);
  });
  it('rests only in months in which grass grows, where the place tells them: common practice', () => {
    const readyBy = (outDay: string, growth: Place['growth']) =>
      nextReady({ ...place(), growth }, [aMove({ inDay: outDay, outDay })], dayIn(outDay)).find(({ ground }) => ground.id === 'low');
    // December 29 and 40 days of growth from April 1 on; October 20 and twelve days of October, 28 of April.
    const north = { startMonth: 'apr', quitMonth: 'oct' } as const;
    expect(readyBy('2025-12-29', north)).toMatchObject({ from: 'rest-in-growth', readyDay: dayIn('2026-05-11') });
    expect(readyBy('2025-10-20', north)).toMatchObject({ from: 'rest-in-growth', readyDay: dayIn('2026-04-29') });
    expect(readyBy('2026-05-08', north)).toMatchObject({ from: 'rest', readyDay: dayIn('2026-06-17') });
    // South of the equator growth goes over New Year.
    expect(readyBy('2025-12-29', { startMonth: 'sep', quitMonth: 'apr' })).toMatchObject({ from: 'rest', readyDay: dayIn('2026-02-07') });
    // Without both months every day counts.
    expect(readyBy('2025-12-29', { startMonth: 'apr' })).toMatchObject({ from: 'rest', readyDay: dayIn('2026-02-07') });
  });
  it('offers ground that is cut behind all others, and woods not at all', () => {
    const [low, high] = aPlace().pastures;
    if (!low || !high) throw new RangeError('two pastures');
    const pastures = [{ ...low, use: 'hay' as const }, high, { ...high, id: 'trees', name: 'Trees', use: 'woods' as const }];
    expect(nextReady(aPlace({ pastures }), [out('2026-05-08')], today).map(({ ground, from, readyDay }) => [ground.id, from, readyDay])).toEqual([
      ['high', 'never', today],
      ['low', 'hay', undefined],
    ]);
    expect(nextReady(aPlace({ pastures }), [aMove()], today).map(({ ground }) => ground.id)).toEqual(['high']);
  });
  it('is none that stock leave on a day to come, and rests from the later day where the record has them out before they came', () => {
    expect(nextReady(place(), [out('2026-06-21')], today).map(({ ground }) => ground.id)).toEqual(['high']);
    const swapped = aMove({ inDay: '2026-06-10', outDay: '2026-05-01' });
    expect(nextReady(place(), [swapped], today).find(({ ground }) => ground.id === 'low')).toMatchObject({
      restedDays: 10,
      readyDay: dayIn('2026-07-20'),
    });
  });
  it('is no paddock of a pasture on all of which stock stand, and rests from when they left all of it', () => {
    const divided = place({
      paddocks: [
        { id: 'a', name: 'A' },
        { id: 'b', name: 'B' },
      ],
    });
    expect(nextReady(divided, [aMove()], today).map(({ ground }) => ground.id)).toEqual(['high']);
    expect(nextReady(divided, [out('2026-05-08')], today).map(({ ground, restedDays }) => [ground.id, restedDays])).toEqual([
      ['high', undefined],
      ['a', 43],
      ['b', 43],
    ]);
  });
  it('takes the longest rest that guides give for slow growth where the place tells none: 60 days', () => {
    expect(slowRestDays).toBe(60);
    const [, low] = nextReady(aPlace(), [out('2026-05-08')], today);
    expect(low?.readyDay).toBe(dayIn('2026-07-07'));
  });
  it('is ready at a height at or above the one to start at, whatever the rest', () => {
    const ready = nextReady(place(), [out('2026-06-10'), aHeight({ day: '2026-06-18', heightIn: 8 })], today);
    expect(ready.find(({ ground }) => ground.id === 'low')).toMatchObject({ from: 'height', readyDay: today });
  });
  it('is ready by the growth of two heights since they went out: 4 in and 6 in ten days apart, 8 in ten days on', () => {
    const heights = [aHeight({ day: '2026-06-05', heightIn: 4 }), aHeight({ id: 'h2', day: '2026-06-15', heightIn: 6 })];
    const [, low] = nextReady(place(), [out('2026-06-01'), ...heights], today);
    expect(low).toMatchObject({ from: 'heights', readyDay: dayIn('2026-06-25'), lookDay: dayIn('2026-06-22') });
  });
  it('is not before rain where it did not grow, and stands last', () => {
    const heights = [aHeight({ day: '2026-06-05', heightIn: 4 }), aHeight({ id: 'h2', day: '2026-06-15', heightIn: 4 })];
    const ready = nextReady(place(), [out('2026-06-01'), ...heights], today);
    expect(ready.map(({ ground, from }) => [ground.id, from])).toEqual([
      ['high', 'never'],
      ['low', 'no-growth'],
    ]);
    expect(ready[1]?.readyDay).toBeUndefined();
  });
  it('goes by no height from before they went out, and by no two on neighboring days', () => {
    const [, low] = nextReady(place(), [aHeight({ day: '2026-05-05', heightIn: 9 }), out('2026-06-01')], today);
    expect(low?.from).toBe('rest');
    const near = [aHeight({ day: '2026-06-14', heightIn: 4 }), aHeight({ id: 'h2', day: '2026-06-15', heightIn: 5 })];
    expect(nextReady(place(), [out('2026-06-01'), ...near], today)[1]?.from).toBe('rest');
  });
  it('is none on which stock stand, and of two that are ready the one that rested longer', () => {
    const rows = [out('2026-04-02'), aMove({ id: 'm2', paddockId: 'high', inDay: '2026-02-01', outDay: '2026-03-10' })];
    expect(nextReady(place(), rows, today).map(({ ground }) => ground.id)).toEqual(['high', 'low']);
    expect(nextReady(place(), [...rows, aMove({ id: 'm3', paddockId: 'high', inDay: '2026-06-10' })], today).map(({ ground }) => ground.id)).toEqual([
      'low',
    ]);
  });
});
