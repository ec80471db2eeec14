import { describe, expect, it } from 'vitest';
import { eatenLbPerAc } from '../../calculators/math/forage/eatenLbPerAc.ts';
import { dailyGrowthLbPerAc, grownShare } from '../../calculators/math/forage/grownShare.ts';
import { growthCurveFromAnswers } from '../../calculators/math/forage/growthCurveFromAnswers.ts';
import { linearFit } from '../../calculators/math/forage/linearFit.ts';
import { sampleInterval } from '../../calculators/math/forage/sampleInterval.ts';
import { tabledEatenPercent } from '../../calculators/math/forage/tabledEatenPercent.ts';
import { usableSlopeShare } from '../../calculators/math/forage/usableSlopeShare.ts';
import { growthCurves } from '../../calculators/tables/growthCurves.ts';
import { near } from '../support/near.ts';

describe('what is eaten of a stand', () => {
  it('is the share of the whole growth, or of what stands above the stubble', () => {
    expect(eatenLbPerAc({ measured: 'whole-growth', lbPerAc: 1000, harvestShare: 0.25 })).toBe(250);
    expect(eatenLbPerAc({ measured: 'above-stubble', lbPerAc: 1000, grazedShare: 0.65 })).toBe(650);
  });
  it('goes by the days in the paddock, as the agronomy guide has it', () => {
    // Penn State Agronomy Guide, table 1.8-9; a stay between two lines counts as the shorter one, past the last as the last.
    expect([0.5, 1, 2, 3, 3.9, 4, 5, 6, 7, 30].map(tabledEatenPercent)).toEqual([80, 80, 75, 75, 75, 70, 65, 60, 60, 60]);
  });
  it('keeps its class of slope to the upper end: 10, 30 and 60 percent', () => {
    const steep = (slopePercent: number) => Number(usableSlopeShare({ slopePercent }).toFixed(12));
    expect([10, 10.1, 30, 30.1, 60, 60.1].map(steep)).toEqual([1, 0.7, 0.7, 0.4, 0.4, 0]);
  });
});

describe('growth by the month', () => {
  const printed = growthCurves.find(({ curve }) => curve === 'nd0002');
  it('runs evenly through a month', () => {
    // North Dakota's cool-season curve: 5 % in April, 40 in May; the middle of May is 15.5 days past its start.
    near(grownShare(printed?.percent ?? [], 120 + 15.5), 0.05 + 0.2, 0.5e-12);
    expect(() => dailyGrowthLbPerAc({ yearLbPerAc: 1000, curvePercent: printed?.percent ?? [], dayOfYear: 120.5 })).toThrow('needs dayOfYear');
  });
  it('is shared out from any month on', () => {
    const curve = [35, 10, 5, 5, 0, 0, 0, 0, 0, 0, 5, 40];
    // November to January 5, 40, 35; the year of growth begins on November 1, day 305, and ends on day 304.
    near(grownShare(curve, 304, 11), 1, 0.5e-12);
    near(grownShare(curve, 305, 11), 0.05 / 30, 0.5e-12);
    near(grownShare(curve, 365, 11), 0.45, 0.5e-12);
    near(grownShare(curve, 31, 11), 0.8, 0.5e-12);
    near(grownShare(curve, 0, 11), 0.45, 0.5e-12);
    for (const firstMonth of [0, 13, 1.5]) expect(() => grownShare(curve, 31, firstMonth)).toThrow('needs firstMonth');
  });
  it('puts a flush only past the best month', () => {
    // April to August 1, 4, 9, 16, 25 parts of 25, September a quarter: 2.45 in all. A third of the year flushes, in September alone.
    const curve = growthCurveFromAnswers({ startMonth: 4, bestMonth: 8, quitMonth: 9, fallFlush: 'much' });
    near(curve[7], (100 * 2) / 3 / 2.45, 0.5e-9);
    near(curve[8], (100 * 2 * 0.25) / 3 / 2.45 + 100 / 3, 0.5e-9);
  });
  it('spreads the flush by a quarter, a half, a quarter over the last three months', () => {
    // March to October 4, 16, 36, 25, 16, 9, 4, 1 of 111 parts without it; a third of the year flushes, or a tenth.
    const months = { startMonth: 3, bestMonth: 5, quitMonth: 10 };
    const late = (fallFlush: 'some' | 'much') => growthCurveFromAnswers({ ...months, fallFlush }).slice(7, 10);
    for (const [fallFlush, flushed] of [
      ['some', 0.1],
      ['much', 1 / 3],
    ] as const)
      expect(late(fallFlush).map((share) => Number(share.toFixed(9)))).toEqual(
        [9 / 111, 4 / 111, 1 / 111].map((main, at) => Number((100 * ((1 - flushed) * main + (at === 1 ? flushed / 2 : flushed / 4))).toFixed(9))),
      );
  });
  it('takes whole months in their order', () => {
    const months = { startMonth: 4, bestMonth: 6, quitMonth: 6, fallFlush: 'none' } as const;
    expect(() => growthCurveFromAnswers(months)).not.toThrow();
    for (const wrong of [
      { startMonth: 3.5 },
      { bestMonth: 5.5 },
      { quitMonth: 6.5 },
      { quitMonth: 5 },
      { fallFlush: 'some' },
      { quitMonth: 13 },
    ] as const)
      expect(() => growthCurveFromAnswers({ ...months, ...wrong })).toThrow('needs');
  });
});

describe('a sample', () => {
  it('of equal values has no scatter, and a line through them leaves none', () => {
    expect(sampleInterval([0, 0], 95).variationPercent).toBe(0);
    expect(
      linearFit([
        [1, 5],
        [2, 5],
        [3, 5],
      ]).rSquared,
    ).toBe(1);
  });
  it('scatters by its deviation in percent of the mean', () => {
    // 10 and 14: mean 12, deviation the root of 8.
    near(sampleInterval([10, 14], 95).variationPercent, (100 * Math.sqrt(8)) / 12, 0.5e-12);
    near(sampleInterval([-10, -14], 95).variationPercent, (100 * Math.sqrt(8)) / 12, 0.5e-12);
  });
});
