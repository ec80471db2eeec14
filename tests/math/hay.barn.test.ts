import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { barnForYears, yearsShort } from '../../calculators/math/hay/barnForYears.ts';
import { barnYears } from '../../calculators/math/hay/barnYears.ts';
import { between } from '../support/numbers.ts';

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
});
