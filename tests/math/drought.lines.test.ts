import { describe, expect, it } from 'vitest';
import { decileGroup, decileType6 } from '../../calculators/math/drought/decileType6.ts';
import { droughtEvents } from '../../calculators/math/drought/droughtEvents.ts';
import { bearsIndex, indexSeries } from '../../calculators/math/drought/indexSeries.ts';
import { lastMonthEnd, periodMonths, yearOfDay } from '../../calculators/math/drought/periodMonths.ts';
import { rainBetween, rainByDay } from '../../calculators/math/drought/rainByDay.ts';
import { samePeriods } from '../../calculators/math/drought/samePeriods.ts';
import { splitSeasons } from '../../calculators/math/drought/splitSeasons.ts';
import { indexUnderGamma, standardizedPrecipitationIndex } from '../../calculators/math/drought/standardizedPrecipitationIndex.ts';
import { dayMs } from '../../calculators/units/days.ts';
import { near } from '../support/near.ts';

const dayOn = (date: string): number => Date.parse(date) / dayMs;
/** Every day from one to another, with what `rainOn` says; days that it leaves out were not read. */
const daily = (from: string, to: string, rainOn: (day: number) => number | undefined = () => 0.1) =>
  rainByDay(
    Array.from({ length: dayOn(to) - dayOn(from) + 1 }, (_, at) => dayOn(from) + at).flatMap((day) => {
      const amount = rainOn(day);
      return amount === undefined ? [] : [{ day, amount }];
    }),
  );

describe('classes and spells', () => {
  it('take two deciles to a group', () => {
    expect([1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map(decileGroup)).toEqual([
      'much-below',
      'much-below',
      'below',
      'below',
      'near',
      'near',
      'above',
      'above',
      'much-above',
      'much-above',
    ]);
  });
  it('put each year of nine between its two tenths', () => {
    // By the Weibull rule the k-th of nine amounts is the boundary of k tenths; an amount on it belongs below.
    const record = [1, 2, 3, 4, 5, 6, 7, 8, 9];
    expect([0.5, 1.5, 2.5, 3.5, 4.5, 5.5, 6.5, 7.5, 8.5, 9.5].map((amount) => decileType6(amount, record))).toEqual([
      1,
      ...record.map((at) => at + 1),
    ]);
    expect(record.map((amount) => decileType6(amount, record))).toEqual(record);
  });
  it('begin below 0, outlast a 0, end before a month above it or with the record', () => {
    // McKee and others (1993): a drought begins where the index falls below 0 and ends where it becomes positive, if it reached −1 in between.
    expect(droughtEvents([0, -1.2, 0.1]).map(({ startsAt, endsAt }) => [startsAt, endsAt])).toEqual([[1, 1]]);
    expect(droughtEvents([-1.2, 0, -0.3, 0.1])).toEqual([{ startsAt: 0, endsAt: 2, months: 3, magnitude: 1.5, lowestIndex: -1.2 }]);
    expect(droughtEvents([0.2, -1.5]).map(({ startsAt, endsAt, months }) => [startsAt, endsAt, months])).toEqual([[1, 1, 1]]);
  });
  it('need ten years, four of them with rain, and not all alike', () => {
    const years = [1, 2, 3, 4, 5, 6, 7, 8, 9];
    expect([bearsIndex(years), bearsIndex([...years, 10])]).toEqual([false, true]);
    const dry = Array<number>(8).fill(0);
    expect([bearsIndex([...dry, 1, 2, 3]), bearsIndex([...dry, 1, 2, 3, 4])]).toEqual([false, true]);
    expect(bearsIndex(Array<number>(10).fill(2))).toBe(false);
  });
});

describe('the calendar', () => {
  it('knows the leap day that ends 400 years', () => {
    expect(yearOfDay(dayOn('2000-02-29'))).toBe(2000);
    expect(lastMonthEnd(dayOn('2000-02-29'))).toBe(dayOn('2000-02-29'));
    expect(lastMonthEnd(dayOn('2000-03-01'))).toBe(dayOn('2000-02-29'));
  });
  it('cuts a period that ends within a month', () => {
    const parts = periodMonths(dayOn('2026-02-15'), 1);
    expect(parts.map(({ firstDay, lastDay }) => [firstDay, lastDay])).toEqual([
      [dayOn('2026-01-16'), dayOn('2026-01-31')],
      [dayOn('2026-02-01'), dayOn('2026-02-15')],
    ]);
  });
});

describe('a record by days', () => {
  it('begins with the first of the days that its first line covers', () => {
    const table = rainByDay([{ day: 5, amount: 3, days: 3 }]);
    expect([table.firstDay, table.lastDay, rainBetween(table, 3, 4)]).toEqual([3, 5, { rain: 2, daysRead: 2 }]);
    expect(rainBetween(rainByDay([{ day: 5, amount: 3 }]), 5, 5)).toEqual({ rain: 3, daysRead: 1 });
  });
  it('refuses days told twice, half days, and lines out of order', () => {
    const lines =
      (...given: { day: number; amount: number; days?: number }[]) =>
      () =>
        rainByDay(given);
    expect(lines({ day: 10, amount: 1 }, { day: 11, amount: 1, days: 2 })).toThrow('needs day');
    expect(lines({ day: 10, amount: 1 }, { day: 11, amount: 1, days: 1 })).not.toThrow();
    expect(lines({ day: 10, amount: 1 }, { day: 11.5, amount: 1 })).toThrow('needs');
    expect(lines({ day: 10, amount: 1 }, { day: 10.5, amount: 1 }, { day: 12, amount: 1 })).toThrow('needs day');
    expect(lines({ day: 10, amount: 1 }, { day: 8, amount: 1 })).toThrow('needs days from first to last');
  });
  it('has no January that it does not cover', () => {
    const years = (from: string, to: string) =>
      samePeriods({ table: daily(from, to), lastDay: dayOn('2026-01-31'), months: 1, leastShare: 1 }).map(({ year }) => year);
    expect(years('2020-01-01', '2022-01-31')).toEqual([2020, 2021, 2022]);
    expect(years('2020-01-02', '2022-01-30')).toEqual([2021]);
  });
  it('counts a past season that it spans, read for 95 days of 100', () => {
    const season = { fromDay: dayOn('2026-06-01'), toDay: dayOn('2026-06-20'), atDays: [dayOn('2026-06-10')] };
    const years = (from: string, to: string, unread: readonly string[] = []) =>
      splitSeasons({ table: daily(from, to, (day) => (unread.map(dayOn).includes(day) ? undefined : 0.1)), ...season }).map(({ year }) => year);
    expect(years('2023-06-01', '2025-06-20')).toEqual([2023, 2024, 2025]);
    expect(years('2023-06-02', '2025-06-19')).toEqual([2024]);
    // 19 of 20 days are 95 percent; 18 are not.
    expect(years('2023-06-01', '2024-06-20', ['2023-06-05', '2024-06-05', '2024-06-07'])).toEqual([2023]);
    for (const wrong of [{ fromDay: season.fromDay + 0.5 }, { toDay: season.toDay - 0.5 }, { atDays: [season.fromDay + 1.5] }])
      expect(() => splitSeasons({ table: daily('2023-06-01', '2023-06-20'), ...season, ...wrong })).toThrow('needs');
  });
});

describe('the index', () => {
  const record = [0, 0, 1, 2, 2.5, 3, 3, 3.5, 4, 4, 5, 6];
  it('puts no rain at the top of the dry years, or in their middle where that is asked for', () => {
    const gamma = { shape: 2, scale: 1.5, zeroShare: 0.3 };
    // Φ(−0.5244) = 0.30, Φ(−1.0364) = 0.15.
    near(indexUnderGamma({ ...gamma, amount: 0 }), -0.5244, 0.5e-4);
    near(indexUnderGamma({ ...gamma, amount: 0, centersZeros: true }), -1.0364, 0.5e-4);
    expect(indexUnderGamma({ ...gamma, amount: 2, centersZeros: true })).toBe(indexUnderGamma({ ...gamma, amount: 2 }));
    near(standardizedPrecipitationIndex({ record, amount: 0, fit: 'thom' }), -0.9674, 0.5e-4); // Φ⁻¹(2 / 12)
    expect(indexUnderGamma({ ...gamma, amount: 1e9 })).toBe(3);
  });
  it('is fitted the way that is named', () => {
    const [thom, exact] = (['thom', 'likelihood'] as const).map((fit) => standardizedPrecipitationIndex({ record, amount: 1, fit }));
    expect(thom).not.toBe(exact);
    near(thom, exact, 0.05);
  });
  it('of a series runs on over dry months, and breaks where nobody read', () => {
    // Julys are dry in two years of twelve; nobody read in the March of 2009.
    const dry = [dayOn('2004-07-01'), dayOn('2008-07-01')];
    const isDry = (day: number) => dry.some((first) => day >= first && day < first + 31);
    const table = daily('2000-01-01', '2011-12-31', (day) =>
      day >= dayOn('2009-03-01') && day <= dayOn('2009-03-31') ? undefined : isDry(day) ? 0 : 0.05 + 0.01 * ((day * 7919) % 13),
    );
    const runs = indexSeries({ table, months: 1, leastShare: 0.9 });
    expect(runs.map((run) => run.length)).toEqual([9 * 12 + 2, 2 * 12 + 9]);
    expect(runs[1]?.[0]?.lastDay).toBe(dayOn('2009-04-30'));
    // Two dry Julys of twelve: Φ⁻¹(2 / 12).
    near(runs[0]?.find(({ lastDay }) => lastDay === dayOn('2004-07-31'))?.index, -0.9674, 0.5e-4);
  });
});
