import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decileGroup, decileType6 } from '../../calculators/math/drought/decileType6.ts';
import { droughtEvents } from '../../calculators/math/drought/droughtEvents.ts';
import { gammaFitLikelihood, gammaFitThom } from '../../calculators/math/drought/gammaFitThom.ts';
import { bearsIndex, indexSeries } from '../../calculators/math/drought/indexSeries.ts';
import { indexStandardError } from '../../calculators/math/drought/indexStandardError.ts';
import { percentOfNormal } from '../../calculators/math/drought/percentOfNormal.ts';
import { lastMonthEnd, periodMonths, sameDayLater, yearOfDay } from '../../calculators/math/drought/periodMonths.ts';
import { quantileType6 } from '../../calculators/math/drought/quantileType6.ts';
import { rainBetween, rainByDay } from '../../calculators/math/drought/rainByDay.ts';
import { rankInRecord } from '../../calculators/math/drought/rankInRecord.ts';
import { runningSums } from '../../calculators/math/drought/runningSums.ts';
import { splitSeasons } from '../../calculators/math/drought/splitSeasons.ts';
import { indexUnderGamma, standardizedPrecipitationIndex } from '../../calculators/math/drought/standardizedPrecipitationIndex.ts';
import { yearsToBound } from '../../calculators/math/drought/yearsToBound.ts';
import { digamma } from '../../calculators/math/special/digamma.ts';
import { inverseNormal } from '../../calculators/math/special/inverseNormal.ts';
import { gammaDeviate } from '../../calculators/math/weather/gammaDeviate.ts';
import { seededRandom } from '../../calculators/math/weather/seededRandom.ts';
import { dayMs } from '../../calculators/units/days.ts';
import { between } from '../support/numbers.ts';

const amounts = fc.array(between(0.05, 20), { minLength: 10, maxLength: 60 }).filter((list) => Math.max(...list) > 1.05 * Math.min(...list));
const mean = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;

describe('gamma fits', () => {
  it('keep the mean; the exact one solves ln α − ψ(α) = A; Thom stays near it', () => {
    fc.assert(
      fc.property(amounts, (list) => {
        const [thom, exact] = [gammaFitThom(list), gammaFitLikelihood(list)];
        const average = mean(list);
        const gap = Math.log(average) - mean(list.map(Math.log));
        for (const { shape, scale } of [thom, exact]) expect(Math.abs(shape * scale - average)).toBeLessThan(1e-9 * average);
        expect(Math.abs(Math.log(exact.shape) - digamma(exact.shape) - gap)).toBeLessThan(1e-10 * (1 + gap));
        if (exact.shape > 1) expect(Math.abs(thom.shape / exact.shape - 1)).toBeLessThan(0.01);
      }),
    );
  });
  it('follow the unit', () => {
    fc.assert(
      fc.property(amounts, (list) => {
        const [inches, millimeters] = [gammaFitThom(list), gammaFitThom(list.map((each) => 25.4 * each))];
        expect(Math.abs(millimeters.shape / inches.shape - 1)).toBeLessThan(1e-6);
        expect(Math.abs(millimeters.scale / (25.4 * inches.scale) - 1)).toBeLessThan(1e-6);
      }),
    );
  });
  it('find the distribution that the numbers came from', () => {
    const random = seededRandom(99);
    const { shape, scale } = gammaFitLikelihood(Array.from({ length: 20_000 }, () => gammaDeviate(2.5, 4, random)));
    expect(Math.abs(shape - 2.5)).toBeLessThan(0.1);
    expect(Math.abs(scale - 4)).toBeLessThan(0.16);
  });
});

describe('the standardized precipitation index', () => {
  it('rises with rain, follows no unit, and stays within its limit', () => {
    fc.assert(
      fc.property(amounts, between(0, 20), between(0.01, 5), fc.constantFrom('thom' as const, 'likelihood' as const), (record, amount, more, fit) => {
        const index = standardizedPrecipitationIndex({ amount, record, fit });
        expect(standardizedPrecipitationIndex({ amount: amount + more, record, fit })).toBeGreaterThanOrEqual(index);
        expect(Math.abs(index)).toBeLessThanOrEqual(3);
        const scaled = standardizedPrecipitationIndex({ amount: 25.4 * amount, record: record.map((each) => 25.4 * each), fit });
        expect(Math.abs(scaled - index)).toBeLessThan(1e-6);
      }),
    );
  });
  it('of no rain is that of the share of dry years, or of half of it', () => {
    fc.assert(
      fc.property(between(0.01, 0.9), (zeroShare) => {
        const gamma = { shape: 1.2, scale: 3, amount: 0, zeroShare };
        expect(Math.abs(indexUnderGamma(gamma) - inverseNormal(zeroShare))).toBeLessThan(1e-12);
        expect(Math.abs(indexUnderGamma({ ...gamma, centersZeros: true }) - inverseNormal(zeroShare / 2))).toBeLessThan(1e-12);
      }),
    );
  });
  it('scatters between short records as its standard error says', () => {
    // The error formula is that of a normal fit; with a nearly normal gamma, records of 30 years must come close to it.
    const random = seededRandom(3);
    const truth = { shape: 60, scale: 1 };
    const amount = 60 - 1.5 * Math.sqrt(60);
    const scatter = Array.from({ length: 600 }, () =>
      standardizedPrecipitationIndex({
        amount,
        record: Array.from({ length: 30 }, () => gammaDeviate(truth.shape, truth.scale, random)),
        fit: 'thom',
        limit: 8,
      }),
    );
    const center = mean(scatter);
    const spread = Math.sqrt(mean(scatter.map((each) => (each - center) ** 2)));
    expect(Math.abs(spread / indexStandardError(-1.5, 30) - 1)).toBeLessThan(0.15);
  });
});

describe('ranks, quantiles, deciles', () => {
  const record = fc.array(between(0, 40), { minLength: 9, maxLength: 60 });
  it('quantiles lie in the record, rise with the share, and put the driest year at 1 / (n + 1)', () => {
    fc.assert(
      fc.property(record, between(0, 1), between(0, 1), (values, first, second) => {
        const [low, high] = [Math.min(first, second), Math.max(first, second)];
        expect(quantileType6(values, low)).toBeLessThanOrEqual(quantileType6(values, high) + 1e-12);
        expect(quantileType6(values, 0)).toBe(Math.min(...values));
        expect(quantileType6(values, 1)).toBe(Math.max(...values));
        // At k of n + 1 it is the kth year of the record itself.
        for (const [at, value] of values.toSorted((one, other) => one - other).entries())
          expect(Math.abs(quantileType6(values, (at + 1) / (values.length + 1)) - value)).toBeLessThan(1e-9);
      }),
    );
  });
  it('deciles rise with the amount and run from 1 to 10', () => {
    fc.assert(
      fc.property(record, between(0, 50), between(0, 10), (values, amount, more) => {
        const decile = decileType6(amount, values);
        expect(decileType6(amount + more, values)).toBeGreaterThanOrEqual(decile);
        expect(decileType6(0, values)).toBe(1);
        expect(decileType6(41, values)).toBe(10);
        expect(decileGroup(decile)).toBeDefined();
      }),
    );
  });
  it('counts make up the record', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 40 }), fc.integer({ min: 0, max: 9 }), (values, amount) => {
        const { years, drierYears, sameYears, rank } = rankInRecord(amount, values);
        expect(years).toBe(values.length);
        expect(rank).toBe(drierYears + 1);
        expect(years - drierYears - sameYears).toBe(values.filter((each) => each > amount).length);
      }),
    );
  });
  it('percent of normal of normal is 100', () => {
    fc.assert(
      fc.property(between(0.1, 60), (normal) => {
        expect(Math.abs(percentOfNormal(normal, normal) - 100)).toBeLessThan(1e-12);
      }),
    );
  });
});

describe('sums and spells', () => {
  it('running sums of one month are the months, and of all months their total', () => {
    fc.assert(
      fc.property(fc.array(between(0, 20), { minLength: 1, maxLength: 40 }), (monthly) => {
        expect(runningSums(monthly, 1)).toEqual(monthly);
        const [total] = runningSums(monthly, monthly.length);
        expect(Math.abs((total ?? Number.NaN) - monthly.reduce((sum, each) => sum + each, 0))).toBeLessThan(1e-9);
      }),
    );
  });
  it('every drought reaches −1, holds no positive month, and no two touch', () => {
    fc.assert(
      fc.property(fc.array(between(-3, 3), { minLength: 1, maxLength: 80 }), (indices) => {
        const events = droughtEvents(indices);
        for (const [position, { startsAt, endsAt, months, magnitude, lowestIndex }] of events.entries()) {
          const spell = indices.slice(startsAt, endsAt + 1);
          expect(spell).toHaveLength(months);
          expect(Math.max(...spell)).toBeLessThanOrEqual(0);
          expect(lowestIndex).toBe(Math.min(...spell));
          expect(lowestIndex).toBeLessThanOrEqual(-1);
          expect(magnitude).toBeGreaterThanOrEqual(1);
          const next = events[position + 1];
          if (next) expect(next.startsAt).toBeGreaterThan(endsAt + 1);
        }
        const covered = events.flatMap(({ startsAt, endsAt }) => indices.slice(startsAt, endsAt + 1)).filter((index) => index <= -1);
        expect(covered).toHaveLength(indices.filter((index) => index <= -1).length);
      }),
    );
  });
  it('the years that bound a need are the fewest that do', () => {
    fc.assert(
      fc.property(between(0.01, 0.6), between(0.5, 0.99), (share, confidence) => {
        const years = yearsToBound(share, confidence);
        expect(1 - (1 - share) ** years).toBeGreaterThanOrEqual(confidence - 1e-12);
        expect(1 - (1 - share) ** (years - 1)).toBeLessThan(confidence);
      }),
    );
  });
});

describe('periods of a record', () => {
  const day = fc.integer({ min: -100_000, max: 80_000 });
  const dateOf = (number: number): Date => new Date(number * dayMs);

  // Held against the calendar that every browser and Node carry (ECMAScript, Date).
  it('keeps the last of February the last of February', () => {
    const day = (year: number, month: number, date: number): number => Date.UTC(year, month - 1, date) / dayMs;
    expect(sameDayLater(day(2001, 2, 28), 3)).toBe(day(2004, 2, 29));
    expect(sameDayLater(day(2004, 2, 29), -1)).toBe(day(2003, 2, 28));
  });
  it('are cut where the calendar cuts them', () => {
    fc.assert(
      fc.property(day, fc.integer({ min: 1, max: 24 }), fc.integer({ min: -40, max: 40 }), (last, months, years) => {
        const parts = periodMonths(last, months);
        expect(parts.at(-1)?.lastDay).toBe(last);
        for (const [index, { firstDay, lastDay, month, monthDays }] of parts.entries()) {
          const date = dateOf(lastDay);
          expect(date.getUTCMonth() + 1).toBe(month);
          expect(new Date(Date.UTC(date.getUTCFullYear(), month, 0)).getUTCDate()).toBe(monthDays);
          if (index > 0) expect(dateOf(firstDay).getUTCDate()).toBe(1);
        }
        const isMonthEnd = dateOf(last + 1).getUTCDate() === 1;
        expect(parts).toHaveLength(isMonthEnd ? months : parts.length);
        expect(yearOfDay(last)).toBe(dateOf(last).getUTCFullYear());
        expect(dateOf(lastMonthEnd(last) + 1).getUTCDate()).toBe(1);
        expect(last - lastMonthEnd(last)).toBeLessThan(31);
        const later = dateOf(sameDayLater(last, years));
        expect([later.getUTCFullYear(), later.getUTCMonth()]).toEqual([dateOf(last).getUTCFullYear() + years, dateOf(last).getUTCMonth()]);
      }),
      { seed: 1 },
    );
  });

  it('hold the rain of their days, wherever they are cut', () => {
    const gauge = fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 4 }), between(0, 5)), { minLength: 2, maxLength: 40 });
    fc.assert(
      fc.property(gauge, fc.integer({ min: 0, max: 200 }), (steps, cut) => {
        let at = 0;
        const lines = steps.map(([gap, days, amount]) => {
          at += gap - 1 + days;
          return { day: at, amount, days };
        });
        const table = rainByDay(lines);
        const [before, after] = [rainBetween(table, -10, cut), rainBetween(table, cut + 1, at + 300)];
        const all = lines.reduce((sum, { amount }) => sum + amount, 0);
        expect(Math.abs(before.rain + after.rain - all)).toBeLessThan(1e-6);
        expect(before.daysRead + after.daysRead).toBe(lines.reduce((sum, { days }) => sum + days, 0));
      }),
      { seed: 1 },
    );
  });

  it('give the index that each one has by itself', () => {
    const random = seededRandom(7);
    const monthly = Array.from({ length: 31 * 12 }, () => gammaDeviate(2, 1.5, random));
    let end = 30;
    const lines = monthly.map((amount) => {
      const line = { day: end, amount, days: dateOf(end).getUTCDate() };
      end = lastMonthEnd(end + 31);
      return line;
    });
    const [run = []] = indexSeries({ table: rainByDay(lines), months: 3, leastShare: 1 });
    const sums = runningSums(monthly, 3);
    expect(run).toHaveLength(sums.length);
    for (const at of [0, 40, 200, 369]) {
      const record = sums.filter((_, index) => index % 12 === at % 12);
      const alone = standardizedPrecipitationIndex({ amount: sums[at] ?? 0, record, fit: 'thom' });
      expect(Math.abs((run[at]?.index ?? Number.NaN) - alone)).toBeLessThan(1e-6);
    }
  });
});

describe('seasons of a record', () => {
  const year = (which: number, part: (dayOfYear: number) => number) =>
    Array.from({ length: 365 }, (_, index) => ({ day: Date.UTC(which, 0, 1 + index) / dayMs, amount: part(index) }));
  const [fromDay, toDay] = [Date.UTC(2026, 2, 1) / dayMs, Date.UTC(2026, 9, 31) / dayMs];

  it('shares a total out over its days, and finds the same rain before and after', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 244 }), fc.integer({ min: 1, max: 40 }), (into, daily) => {
        const readings = [...year(2001, () => daily), ...year(2002, () => daily)];
        const totals = [2001, 2002].map((which) => ({ day: Date.UTC(which, 11, 31) / dayMs, amount: 365 * daily, days: 365 }));
        const ask = { fromDay, toDay, atDays: [fromDay + into] };
        const seasons = splitSeasons({ table: rainByDay(readings), ...ask });
        expect(seasons.map((each) => each.year)).toEqual([2001, 2002]);
        for (const { through, whole } of [...seasons, ...splitSeasons({ table: rainByDay(totals), ...ask })]) {
          expect(Math.abs((through[0] ?? 0) - daily * (into + 1))).toBeLessThan(1e-6);
          expect(Math.abs(whole - daily * 245)).toBeLessThan(1e-6);
        }
      }),
    );
  });
  it('leaves out a season that was not read through, and this one', () => {
    const readings = [...year(2001, () => 1), ...year(2002, () => 1).filter((_, index) => index < 150 || index > 170), ...year(2026, () => 1)];
    expect(splitSeasons({ table: rainByDay(readings), fromDay, toDay, atDays: [] }).map((each) => each.year)).toEqual([2001]);
  });
});

it('bears no index where every year is nearly alike, and never breaks where it bears one', () => {
  // Ten years between 10 and 10.02: a gamma curve so narrow that its series does not settle.
  const alike = Array.from({ length: 30 }, (_, year) => 10 + 0.02 * (year % 2));
  expect(bearsIndex(alike)).toBe(false);
  expect(bearsIndex(Array.from({ length: 30 }, (_, year) => 10 + (year % 5)))).toBe(true);
  fc.assert(
    fc.property(fc.array(between(9.9, 10.1), { minLength: 10, maxLength: 40 }), (record) => {
      if (!bearsIndex(record)) return;
      const { shape, scale } = gammaFitThom(record);
      expect(Number.isFinite(indexUnderGamma({ shape, scale, amount: 10, zeroShare: 0 }))).toBe(true);
    }),
  );
});
