import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { barnYears } from '../../calculators/math/hay/barnYears.ts';
import { exactBinomialInterval } from '../../calculators/math/special/exactBinomialInterval.ts';
import { resampledYears } from '../../calculators/math/weather/resampledYears.ts';
import { seededRandom } from '../../calculators/math/weather/seededRandom.ts';
import { barnAnswer, canBoundOneInTen, hayLists, hayToHave, inBlocks } from '../../calculators/season/odds.ts';
import { run } from '../../calculators/season/run.ts';
import { hayYearsOf } from '../../calculators/season/years.ts';
import { between } from '../support/numbers.ts';
import { changedWeather, demoWeather, sideOf, skyWith } from '../support/seasonPlace.ts';

const need = [60, 75, 40, 110, 90, 55, 130, 70, 85, 160, 95, 50, 65, 145, 80, 105, 45, 120, 70, 155, 100, 60, 170, 85, 75, 115, 50, 90, 140, 65];
const noCrop = need.map(() => 0);

describe('years short', () => {
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
  it('are counted as the barn of the years drawn is', () => {
    const years = fc.array(fc.record({ need: between(0, 200), crop: between(0, 120) }), { minLength: 4, maxLength: 40 });
    const kept = fc.record({ barnTons: between(0, 200), mostBoughtTons: between(0, 150), carriedShare: between(0, 1) });
    fc.assert(
      fc.property(
        years,
        kept,
        fc.constantFrom(2 as const, 3 as const, 4 as const),
        fc.integer({ min: 1, max: 1e6 }),
        (list, own, blockYears, seed) => {
          const random = seededRandom(seed);
          const counts = Array.from({ length: 5 }, () => {
            const drawn = resampledYears({ years: list.length, blockYears, random }).map(
              (year) => list[year] ?? { need: Number.NaN, crop: Number.NaN },
            );
            const barn = { ...own, startTons: own.barnTons, mostBoughtTons: () => own.mostBoughtTons };
            return barnYears({ ...barn, needTons: drawn.map((each) => each.need), cropTons: drawn.map((each) => each.crop) }).filter(
              ({ shortTons }) => shortTons > 0,
            ).length;
          });
          const read = { needTons: list.map((each) => each.need), cropTons: list.map((each) => each.crop) };
          expect(inBlocks(read, own, { blockYears, draws: 5, seed })).toEqual({
            blockYears,
            of: list.length,
            meanShort: counts.reduce((sum, each) => sum + each, 0) / 5,
            leastShort: Math.min(...counts),
            mostShort: Math.max(...counts),
          });
        },
      ),
    );
  });
  it('keep years together and in their order: a block as long as the record is the record', () => {
    const four = { needTons: [60, 150, 150, 40], cropTons: [0, 0, 0, 0] };
    const { carried } = barnAnswer(four, barn);
    expect(carried.short).toBe(1);
    expect(inBlocks(four, barn, { blockYears: 4, draws: 50, seed: 3 })).toMatchObject({ leastShort: 1, meanShort: 1, mostShort: 1 });
    // Two by two, by hand: 60, 150, 60, 150 is short once, in its last fall; 150 four times is short in all but its first.
    expect(inBlocks(four, barn, { blockYears: 2, draws: 50, seed: 3 })).toMatchObject({ leastShort: 1, mostShort: 3 });
  });
  it('draw the crop of a year along with its need, and buy no more than can be bought', () => {
    const none = { barnTons: 200, mostBoughtTons: 0, carriedShare: 0 };
    expect(inBlocks({ needTons: need, cropTons: need }, none, { blockYears: 2, draws: 50, seed: 5 }).mostShort).toBe(0);
    const even = { needTons: need.map(() => 100), cropTons: noCrop };
    // Full in its first fall, and never again.
    expect(inBlocks(even, { ...none, barnTons: 100 }, { blockYears: 3, draws: 20, seed: 5 })).toMatchObject({ leastShort: 29, mostShort: 29 });
  });
  it('repeat themselves by their seed, and by no other', () => {
    const drawn = (seed: number) => inBlocks(lists, barn, { blockYears: 3, draws: 40, seed });
    expect(drawn(8)).toEqual(drawn(8));
    expect(drawn(9)).not.toEqual(drawn(8));
  });
  it('in a record of one year are that year', () => {
    expect(inBlocks({ needTons: [200], cropTons: [0] }, barn, { blockYears: 4, draws: 5, seed: 1 })).toMatchObject({ meanShort: 1, of: 1 });
  });
});
