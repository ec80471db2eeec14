import { describe, expect, it } from 'vitest';
import { staysOf } from '../../src/place/record/stays.ts';
import { groundYears, rainByMonth, wholeYears, yearsOf } from '../../src/place/record/years.ts';
import { near } from '../support/near.ts';
import { aPlace } from './aPlace.ts';
import { counting, lowToHigh, today } from './aRecord.ts';
import { aHay, aMove, aPlan, aRain } from './aRow.ts';

// What is expected was worked out by hand on a calendar and with a pencil: common practice.

describe('a year', () => {
  it('is summed by ground, with nothing for a sum that has an unknown part', () => {
    const rows = [...lowToHigh, aMove({ id: 'm5', paddockId: 'high', inDay: '2026-06-01', outDay: '2026-06-03', stock: [] })];
    const [low, high] = groundYears(staysOf(aPlace(), rows, counting));
    // 7 and 8 days: 45 x 15 / 85.
    expect(low).toMatchObject({ name: 'Low bench', stays: 2, days: 15 });
    near(low?.stockDaysPerAc, 7.941, 0.0005);
    expect(high).toMatchObject({ days: 14 });
    expect(high?.stockDaysPerAc).toBeUndefined();
  });
  it('is whole when it is over and the record had it from turn-in on', () => {
    const rows = [
      aMove({ inDay: '2024-04-25', outDay: '2024-05-02' }),
      aMove({ id: 'm2', inDay: '2025-05-01', outDay: '2025-05-09' }),
      aMove({ id: 'm3' }),
    ];
    expect(wholeYears(aPlace({ season: { turnInDay: '04-20' } }), rows, today)).toEqual([2024, 2025]);
    expect(wholeYears(aPlace({ season: { turnInDay: '03-20' } }), rows, today)).toEqual([2025]);
    expect(wholeYears(aPlace(), rows, today)).toEqual([2025]);
    expect(wholeYears(aPlace(), [], today)).toEqual([]);
    expect(yearsOf(rows, today)).toEqual([2026, 2025, 2024]);
  });
  it('has its rain by month, and nothing for a month in which nobody read', () => {
    const rows = [aRain(), aRain({ id: 'r2', day: '2026-06-02', days: 4, amountIn: 1 }), aRain({ id: 'r3', day: '2025-05-01', amountIn: 9 })];
    // Four days to June 2: half an inch in May, half in June.
    expect(rainByMonth(rows, 2026, today).slice(3, 7)).toEqual([
      undefined,
      { amountIn: 1, readDays: 3, days: 31 },
      // To today, the 20th.
      { amountIn: 0.5, readDays: 2, days: 20 },
      undefined,
    ]);
    expect(rainByMonth(rows, 2025, today)[4]).toEqual({ amountIn: 9, readDays: 1, days: 31 });
  });
  it('is always this one, and every one in which stock stood somewhere', () => {
    expect(yearsOf([], today)).toEqual([2026]);
    expect(yearsOf([aPlan({ inDay: '2027-01-03', outDay: '2027-01-07' })], today)).toEqual([2027, 2026]);
    expect(yearsOf([aMove({ inDay: '2023-11-01' })], today)).toEqual([2026, 2025, 2024, 2023]);
    expect(yearsOf([aMove({ inDay: '2024-11-01', outDay: '2025-01-01' })], today)).toEqual([2026, 2024]);
    // A slip that older copies took offers itself to be mended, and not the eighteen centuries since.
    expect(yearsOf([aMove({ inDay: '0202-05-12', outDay: '0202-05-20' })], today)).toEqual([2026, 202]);
    expect(yearsOf([aMove({ inDay: '0202-05-12' })], today).length).toBeLessThan(130);
  });
  // 45 cows of 30 lb on 85 ac from Nov 15 to Apr 15: 16 days of November and 31 of December, then 31 + 28 + 31 + 14 = 104. A bale of 900 lb dry a month from January on.
  it('has its own days of a stay over New Year, its own hay and its own rain', () => {
    const rows = [
      aMove({ inDay: '2025-11-15', outDay: '2026-04-15' }),
      ...['01', '02', '03'].map((month) => aHay({ id: `y${month}`, day: `2026-${month}-10` })),
      aRain({ day: '2025-12-31', amountIn: 0.25 }),
      aRain({ id: 'r2', day: '2026-01-01', amountIn: 0.5 }),
      aRain({ id: 'r3', day: '2026-01-02', amountIn: 1 }),
    ];
    const ofYear = (year: number) => staysOf(aPlace(), rows, { ...counting, year });
    const [before, after] = [ofYear(2025), ofYear(2026)];
    expect(before).toMatchObject([{ days: 47, hayLb: 0, isCut: true, rainIn: 0.25, rainUnreadDays: 45 }]);
    expect(after).toMatchObject([{ days: 104, isCut: true, rainIn: 1.5, rainUnreadDays: 103 }]);
    near(after[0]?.hayLb, 2700, 1e-9);
    near(before[0]?.stockDaysPerAc, (45 * 47) / 85, 1e-9);
    near(after[0]?.stockDaysPerAc, (45 * 104 - 90) / 85, 1e-9);
    expect(groundYears(after)).toMatchObject([{ name: 'Low bench', stays: 1, days: 104 }]);
    expect([ofYear(2024), ofYear(2027)]).toEqual([[], []]);
    expect(staysOf(aPlace(), rows, counting)).toMatchObject([{ days: 151, isCut: false }]);
  });
  it('has none of a stay that ended on its first day, and half a day of one that began and ended on it', () => {
    const days = (inDay: string, outDay: string, year: number) =>
      staysOf(aPlace(), [aMove({ inDay, outDay }), aHay({ day: outDay })], { ...counting, year }).map((stay) => [stay.days, Math.round(stay.hayLb)]);
    expect([days('2025-12-20', '2026-01-01', 2025), days('2025-12-20', '2026-01-01', 2026)]).toEqual([[[12, 900]], []]);
    expect([days('2026-01-01', '2026-01-01', 2025), days('2026-01-01', '2026-01-01', 2026)]).toEqual([[], [[0.5, 900]]]);
  });
  it('has the rest before a stay where that stay began', () => {
    const rows = [aMove({ inDay: '2025-05-01', outDay: '2025-05-08' }), aMove({ id: 'm2', inDay: '2025-11-15', outDay: '2026-04-15' })];
    expect(staysOf(aPlace(), rows, { ...counting, year: 2026 }).map(({ restDays }) => restDays)).toEqual([undefined]);
  });
  it('is whole with stock out on it that came in the year before', () => {
    const rows = [aMove({ inDay: '2023-04-21', outDay: '2025-02-01' }), aMove({ id: 'm2' })];
    expect(wholeYears(aPlace({ season: { turnInDay: '04-20' } }), rows, today)).toEqual([2023, 2024, 2025]);
  });
});
