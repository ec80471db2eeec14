import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { barnForYears, yearsShort } from '../../calculators/math/hay/barnForYears.ts';
import { barnYears } from '../../calculators/math/hay/barnYears.ts';
import { exactBinomialInterval } from '../../calculators/math/special/exactBinomialInterval.ts';
import { barnAnswer, canBoundOneInTen, hayLists, hayToHave, inBlocks } from '../../calculators/season/odds.ts';
import { run } from '../../calculators/season/run.ts';
import { hayYearsOf } from '../../calculators/season/years.ts';
import { between } from '../support/numbers.ts';
import { changedWeather, demoWeather, sideOf, skyWith } from '../support/seasonPlace.ts';

const need = [60, 75, 40, 110, 90, 55, 130, 70, 85, 160, 95, 50, 65, 145, 80, 105, 45, 120, 70, 155, 100, 60, 170, 85, 75, 115, 50, 90, 140, 65];
const noCrop = need.map(() => 0);

describe('one barn through thirty years', () => {
  const shortIn = (mostBoughtTons: (last: number) => number): string =>
    barnYears({ needTons: need, cropTons: noCrop, barnTons: 155, startTons: 155, mostBoughtTons, carriedShare: 1 })
      .flatMap(({ shortTons }, year) => (shortTons > 0 ? [`${year + 1}: ${shortTons}`] : []))
      .join(', ');
  it('is short as worked by hand', () => {
    // Filled every fall only 160 and 170 are more than 155. With 100 bought at most, the year after 155 begins with 100 and so on, by hand.
    expect(shortIn(() => Number.POSITIVE_INFINITY)).toBe('10: 5, 23: 15');
    expect(shortIn(() => 100)).toBe('10: 5, 23: 30');
    expect(shortIn((last) => (last > 120 ? 60 : 100))).toBe('10: 30, 11: 35, 15: 10, 16: 5, 21: 40, 23: 30, 24: 25');
  });
  it('never holds more than its level but what was carried, and loses no hay', () => {
    const years = fc.array(fc.tuple(between(0, 200), between(0, 150)), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(years, between(0, 200), between(0, 150), between(0, 1), (list, barnTons, mostBought, carriedShare) => {
        const [needTons, cropTons] = [list.map(([each]) => each), list.map(([, each]) => each)];
        let carried = barnTons;
        for (const [year, { boughtTons, stoodTons, shortTons }] of barnYears({
          needTons,
          cropTons,
          barnTons,
          startTons: barnTons,
          mostBoughtTons: () => mostBought,
          carriedShare,
        }).entries()) {
          const [needed, crop] = [needTons[year] ?? Number.NaN, cropTons[year] ?? Number.NaN];
          expect(boughtTons).toBeLessThanOrEqual(mostBought);
          expect(stoodTons).toBeLessThanOrEqual(Math.max(barnTons, carried) + 1e-9);
          expect(stoodTons).toBeLessThanOrEqual(carried + crop + boughtTons + 1e-9);
          expect(Math.abs(Math.max(0, needed - stoodTons) - shortTons)).toBeLessThan(1e-9);
          carried = Math.max(0, stoodTons - needed) * carriedShare;
        }
      }),
    );
  });
});

describe('years short', () => {
  const tons = fc.integer({ min: 0, max: 3000 }).map((tenths) => tenths / 10);
  it('are a plain count, and the hay to have leaves just so many', () => {
    fc.assert(
      fc.property(fc.array(tons, { minLength: 1, maxLength: 60 }), tons, fc.integer({ min: 0, max: 10 }), (list, barn, most) => {
        let count = 0;
        for (const each of list) if (each > barn) count += 1;
        expect(yearsShort(list, barn)).toBe(count);
        const level = barnForYears(list, most);
        expect(yearsShort(list, level)).toBeLessThanOrEqual(most);
        // A little less would leave more, unless as many needs are alike as may be exceeded.
        if (most < list.length && level > 0) expect(yearsShort(list, level - 1e-9 * level)).toBeGreaterThan(most);
      }),
      { numRuns: 1000 },
    );
  });
  it('come with their exact range, and a short record says that it cannot bound one in ten', () => {
    const {
      filled,
      carried,
      canBoundOneInTen: isLongEnough,
    } = barnAnswer({ needTons: need, cropTons: noCrop }, { barnTons: 155, mostBoughtTons: 100, carriedShare: 1 });
    expect([filled.short, filled.of, carried.short]).toEqual([2, 30, 2]);
    expect(isLongEnough).toBe(true);
    expect([canBoundOneInTen(28), canBoundOneInTen(29)]).toEqual([false, true]);
    // 3 in 30 is 2 to 27 %, a figure of the trade.
    const three = hayToHave({ needTons: need, cropTons: noCrop }, 1);
    expect([three.barnTons, three.count.short]).toEqual([145, 3]);
    expect([Math.round(100 * three.count.lowerShare), Math.round(100 * three.count.upperShare)]).toEqual([2, 27]);
  });
  it('leave out years in which the rain was not read', () => {
    const side = sideOf({ grazed: 0.045, meadow: 0.061 });
    const weather = changedWeather(demoWeather(), { to: 4 * 365 });
    const years = hayYearsOf(run(skyWith(weather), side), weather);
    expect(hayLists(years).needTons).toEqual(years.map(({ needTons }) => needTons));
    const [first, ...others] = years.map((year, index) => ({ ...year, isCounted: index > 0 }));
    expect(first?.isCounted).toBe(false);
    expect(hayLists(first ? [first, ...others] : [])).toEqual(hayLists(others));
  });
});

describe('blocks of years', () => {
  const lists = { needTons: need, cropTons: noCrop };
  const barn = { barnTons: 155, mostBoughtTons: 60, carriedShare: 0.95 };
  it.each([2, 3, 4] as const)('of %d show scatter, and never narrow the range', (blockYears) => {
    const before = barnAnswer(lists, barn);
    for (const draws of [10, 2000]) {
      const found = inBlocks(lists, barn, { blockYears, draws, seed: 7 });
      expect(found.of).toBe(30);
      expect(found.leastShort).toBeLessThanOrEqual(found.meanShort);
      expect(found.meanShort).toBeLessThanOrEqual(found.mostShort);
      expect(Object.keys(found)).not.toContain('lowerShare');
      // However often they are drawn, the range stays that of thirty years.
      const after = barnAnswer(lists, barn);
      expect(after).toEqual(before);
      expect(after.carried).toMatchObject(exactBinomialInterval({ successes: after.carried.short, trials: 30 }));
    }
  });
  it('in a record of one year are that year', () => {
    expect(inBlocks({ needTons: [200], cropTons: [0] }, barn, { blockYears: 4, draws: 5, seed: 1 })).toMatchObject({ meanShort: 1, of: 1 });
  });
});
