import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { availableFromHeight } from '../../calculators/math/forage/availableFromHeight.ts';
import { availableLbPerAc } from '../../calculators/math/forage/availableLbPerAc.ts';
import { clipFactor } from '../../calculators/math/forage/clipFactor.ts';
import { clippedLbPerAc } from '../../calculators/math/forage/clippedLbPerAc.ts';
import { frameAreaFt2 } from '../../calculators/math/forage/frameAreaFt2.ts';
import { grazingDays } from '../../calculators/math/forage/grazingDays.ts';
import { dailyGrowthLbPerAc, grownShare } from '../../calculators/math/forage/grownShare.ts';
import { type FallFlush, growthCurveFromAnswers } from '../../calculators/math/forage/growthCurveFromAnswers.ts';
import { growthSplit } from '../../calculators/math/forage/growthSplit.ts';
import { linearFit } from '../../calculators/math/forage/linearFit.ts';
import { nearWaterShare } from '../../calculators/math/forage/nearWaterShare.ts';
import { onDryBasis } from '../../calculators/math/forage/onDryBasis.ts';
import { plateMeterCalibration } from '../../calculators/math/forage/plateMeterCalibration.ts';
import { plotsNeeded } from '../../calculators/math/forage/plotsNeeded.ts';
import { sampleInterval } from '../../calculators/math/forage/sampleInterval.ts';
import { standingFeedDays } from '../../calculators/math/forage/standingFeedDays.ts';
import { standingFeedLeft } from '../../calculators/math/forage/standingFeedLeft.ts';
import { stickDensity } from '../../calculators/math/forage/stickDensity.ts';
import { usableSlopeShare } from '../../calculators/math/forage/usableSlopeShare.ts';
import { studentQuantile } from '../../calculators/math/special/studentQuantile.ts';
import { growthCurves } from '../../calculators/tables/growthCurves.ts';
import { between } from '../support/numbers.ts';

const near = (value: number, other: number, relative = 1e-9) =>
  expect(Math.abs(value - other)).toBeLessThanOrEqual(relative * Math.max(1, Math.abs(other)));

describe('clipped plots', () => {
  it('read the same for a hoop measured round and across', () => {
    fc.assert(
      fc.property(between(5, 60), (diameterIn) => {
        near(frameAreaFt2({ shape: 'hoop-across', diameterIn }), frameAreaFt2({ shape: 'hoop-around', circumferenceIn: Math.PI * diameterIn }));
      }),
    );
  });
  it('give the weight back: factor times area times plots is an acre in pounds for a gram', () => {
    fc.assert(
      fc.property(between(0.5, 20), fc.integer({ min: 1, max: 30 }), (areaFt2, plots) => {
        near(clipFactor({ frameAreaFt2: areaFt2, plots }) * areaFt2 * plots, 43_560 / 453.59237);
      }),
    );
  });
  it('do not care how the same dry weight was split between water and hay', () => {
    fc.assert(
      fc.property(between(10, 500), between(10, 100), (dryGrams, dryMatterPercent) => {
        const plots = { plots: 5, frameAreaFt2: 4.8 };
        near(
          clippedLbPerAc({ ...plots, greenGrams: (100 * dryGrams) / dryMatterPercent, dryMatterPercent }),
          clippedLbPerAc({ ...plots, greenGrams: dryGrams, dryMatterPercent: 100 }),
        );
      }),
    );
  });
  it('take the stubble off once: ground less stubble is what a cut at stubble height weighs', () => {
    fc.assert(
      fc.property(between(0, 3000), between(0, 2000), (aboveLbPerAc, stubbleLbPerAc) => {
        near(
          availableLbPerAc({ clippedLbPerAc: aboveLbPerAc + stubbleLbPerAc, clippedTo: 'ground', stubbleLbPerAc }),
          availableLbPerAc({ clippedLbPerAc: aboveLbPerAc, clippedTo: 'stubble', stubbleLbPerAc }),
        );
      }),
    );
  });
  it('return to the first basis when carried there and back', () => {
    fc.assert(
      fc.property(between(1, 5000), between(10, 100), between(10, 100), (weightLb, from, to) => {
        const there = onDryBasis({ weightLb, fromDryMatterPercent: from, toDryMatterPercent: to });
        near(onDryBasis({ weightLb: there, fromDryMatterPercent: to, toDryMatterPercent: from }), weightLb);
      }),
    );
  });
});

describe('the measuring stick', () => {
  it('calibrated on a stand of one density finds that density', () => {
    fc.assert(
      fc.property(between(50, 400), fc.array(between(1, 12), { minLength: 3, maxLength: 8 }), (density, heights) => {
        near(stickDensity(heights.map((heightCutIn) => ({ heightCutIn, lbPerAc: density * heightCutIn }))), density);
      }),
    );
  });
  it('gives nothing below the stubble', () => {
    fc.assert(
      fc.property(between(0, 5), between(0, 5), (heightIn, more) => {
        expect(availableFromHeight({ heightIn, stubbleIn: heightIn + more, poundsPerAcreInch: 250 })).toBe(0);
      }),
    );
  });
});

describe('the plate meter', () => {
  it('refuses nine pairs', () => {
    const pairs = Array.from({ length: 9 }, (_, index) => ({ reading: index, lbPerAc: 100 * index }));
    expect(() => plateMeterCalibration(pairs)).toThrow(RangeError);
  });
  it('finds the line that the pairs lie on', () => {
    fc.assert(
      fc.property(between(0, 1000), between(20, 300), fc.integer({ min: 10, max: 30 }), (intercept, slope, count) => {
        const fit = plateMeterCalibration(
          Array.from({ length: count }, (_, index) => ({ reading: index + 3, lbPerAc: intercept + slope * (index + 3) })),
        );
        near(fit.slope, slope, 1e-7);
        near(fit.intercept, intercept, 1e-6);
        near(fit.rSquared, 1, 1e-9);
      }),
    );
  });
  it('leaves residuals that lean on neither side', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(between(0, 30), between(0, 5000)), { minLength: 5, maxLength: 20 }), (pairs) => {
        const xs = pairs.map(([x]) => x);
        fc.pre(Math.max(...xs) - Math.min(...xs) > 1);
        const { slope, intercept } = linearFit(pairs);
        const residuals = pairs.map(([x, y]) => y - intercept - slope * x);
        expect(Math.abs(residuals.reduce((sum, each) => sum + each, 0))).toBeLessThan(1e-6);
        expect(Math.abs(residuals.reduce((sum, each, index) => sum + each * (xs[index] ?? 0), 0))).toBeLessThan(1e-4);
      }),
    );
  });
});

describe('the sample', () => {
  it('holds its mean, and a surer interval is wider', () => {
    fc.assert(
      fc.property(fc.array(between(0, 4000), { minLength: 3, maxLength: 15 }), between(50, 90), (values, confidence) => {
        const narrow = sampleInterval(values, confidence);
        const wide = sampleInterval(values, confidence + 5);
        expect(narrow.low).toBeLessThanOrEqual(narrow.mean);
        expect(wide.high - wide.low).toBeGreaterThanOrEqual(narrow.high - narrow.low);
      }),
      { numRuns: 50 },
    );
  });
  it('is the least number of plots that is enough', () => {
    fc.assert(
      fc.property(between(5, 120), between(5, 50), fc.constantFrom(80, 90, 95), (variationPercent, withinPercent, confidencePercent) => {
        const plots = plotsNeeded({ variationPercent, withinPercent, confidencePercent });
        const wanted = (count: number) => ((studentQuantile(0.5 + confidencePercent / 200, count - 1) * variationPercent) / withinPercent) ** 2;
        expect(plots).toBeGreaterThanOrEqual(wanted(plots));
        if (plots > 2) expect(plots - 1).toBeLessThan(wanted(plots - 1));
      }),
      { numRuns: 40 },
    );
  });
});

describe('a year of growth', () => {
  const answers = fc
    .tuple(
      fc.integer({ min: 1, max: 9 }),
      fc.integer({ min: 0, max: 4 }),
      fc.integer({ min: 1, max: 6 }),
      fc.constantFrom<FallFlush[]>('none', 'some', 'much'),
    )
    .map(([startMonth, rise, fall, fallFlush]) => {
      const bestMonth = Math.min(11, startMonth + rise);
      return { startMonth, bestMonth, quitMonth: Math.min(12, bestMonth + fall), fallFlush };
    });
  it('from four answers sums to 100, with nothing before it starts or after it quits', () => {
    fc.assert(
      fc.property(answers, (given) => {
        const curve = growthCurveFromAnswers(given);
        near(
          curve.reduce((sum, each) => sum + each, 0),
          100,
        );
        for (const [index, share] of curve.entries()) {
          const month = index + 1;
          if (month < given.startMonth || month > given.quitMonth) expect(share).toBe(0);
          else expect(share).toBeGreaterThan(0);
        }
      }),
    );
  });
  it('from four answers turned round the year is the same curve turned', () => {
    fc.assert(
      fc.property(answers, fc.integer({ min: 0, max: 11 }), ({ fallFlush, ...given }, turn) => {
        const turned = (month: number): number => ((month - 1 + turn) % 12) + 1;
        const { startMonth, bestMonth, quitMonth } = given;
        const curve = growthCurveFromAnswers({ ...given, fallFlush });
        const other = growthCurveFromAnswers({
          startMonth: turned(startMonth),
          bestMonth: turned(bestMonth),
          quitMonth: turned(quitMonth),
          fallFlush,
        });
        for (const [index, share] of curve.entries()) near(other[turned(index + 1) - 1] ?? Number.NaN, share);
      }),
    );
  });
  it('without a flush is most in the best month, and a flush moves growth past it', () => {
    fc.assert(
      fc.property(answers, (given) => {
        const plain = growthCurveFromAnswers({ ...given, fallFlush: 'none' });
        expect(plain.indexOf(Math.max(...plain))).toBe(given.bestMonth - 1);
        const pastBest = (curve: readonly number[]) => curve.slice(given.bestMonth).reduce((sum, each) => sum + each, 0);
        const much = growthCurveFromAnswers({ ...given, fallFlush: 'much' });
        const some = growthCurveFromAnswers({ ...given, fallFlush: 'some' });
        expect(pastBest(some)).toBeGreaterThan(pastBest(plain));
        expect(pastBest(much)).toBeGreaterThan(pastBest(some));
      }),
    );
  });
  it.each(growthCurves)('printed for $name sums to 100, and its days to the year', ({ percent }) => {
    let grown = 0;
    for (let dayOfYear = 1; dayOfYear <= 365; dayOfYear += 1) grown += dailyGrowthLbPerAc({ yearLbPerAc: 3000, curvePercent: percent, dayOfYear });
    near(grown, 3000);
    expect(grownShare(percent, 0)).toBe(0);
    near(grownShare(percent, 365), 1);
  });
});

describe('shares', () => {
  it('of the growth sum to all of it', () => {
    fc.assert(
      fc.property(between(0, 1), between(0, 1), (goneShare, eatenOfGone) => {
        const { leftShare, eatenShare, lostShare } = growthSplit({ goneShare, eatenOfGone });
        near(leftShare + eatenShare + lostShare, 1);
      }),
    );
  });
  it('of an area fall with its slope, and stay between none and all', () => {
    fc.assert(
      fc.property(between(0, 80), between(0, 30), (slopePercent, steeper) => {
        const share = usableSlopeShare({ slopePercent });
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
        expect(usableSlopeShare({ slopePercent: slopePercent + steeper })).toBeLessThanOrEqual(share);
      }),
    );
  });
});

describe('the share of a pasture by its water', () => {
  const at = (farthestMi: number): number => nearWaterShare({ farthestMi });
  /** The printed table, for ground that lies so far from water. */
  const printedAt = (mi: number): number => (mi <= 1 ? 1 : mi <= 2 ? 0.5 : 0);
  it('is all of it within a mile, falls from there, and stays above none', () => {
    fc.assert(
      fc.property(between(0, 10), between(0, 10), (farthestMi, farther) => {
        if (farthestMi <= 1) expect(at(farthestMi)).toBe(1);
        else expect(at(farthestMi)).toBeLessThan(1);
        expect(at(farthestMi + farther)).toBeLessThanOrEqual(at(farthestMi) * (1 + 1e-12));
        expect(at(farthestMi)).toBeGreaterThan(0);
      }),
    );
  });
  it('has no step: a hair farther takes a hair off, at one and two miles too', () => {
    for (const mi of [1, 2]) near(at(mi * (1 + 1e-9)), at(mi), 1e-8);
    fc.assert(
      fc.property(between(0, 10), (farthestMi) => {
        near(at(farthestMi + 1e-6), at(farthestMi), 2e-6);
      }),
    );
  });
  it('goes to none far out: each pasture twice as wide past two miles has a quarter of the share', () => {
    fc.assert(
      fc.property(between(2, 1000), (farthestMi) => {
        near(at(2 * farthestMi) * 4, at(farthestMi));
      }),
    );
    expect(at(1000)).toBeLessThan(1e-5);
  });
  it('is the printed table laid on a thousand thin rings', () => {
    fc.assert(
      fc.property(between(0.01, 10), (farthestMi) => {
        const rings = 1000;
        let counted = 0;
        for (let ring = 0; ring < rings; ring += 1) counted += printedAt(((ring + 0.5) / rings) * farthestMi) * ((ring + 1) ** 2 - ring ** 2);
        expect(Math.abs(counted / rings ** 2 - at(farthestMi))).toBeLessThan(2 / rings);
      }),
    );
  });
});

describe('standing feed', () => {
  it('lasts as long as a herd that eats it in daily strips finds it, day by day', () => {
    fc.assert(
      fc.property(between(1, 200), between(0, 12), (daysWithoutLoss, lossPercentPerMonth) => {
        const dailyDemandLb = 1000;
        const days = standingFeedDays({ eatenLb: daysWithoutLoss * dailyDemandLb, dailyDemandLb, lossPercentPerMonth });
        // A twentieth of a day at a time is near enough to catch a wrong formula.
        const step = 0.05;
        let leftShare = 1;
        let walked = 0;
        while (leftShare > 0 && walked < 400) {
          const standing = standingFeedLeft({ startLbPerAc: 1, lossPercentPerMonth, months: (walked + step / 2) / 30.4375 });
          if (standing <= 0) break;
          leftShare -= step / (daysWithoutLoss * standing);
          walked += step;
        }
        expect(Math.abs(walked - days)).toBeLessThan(0.3);
      }),
      { numRuns: 30 },
    );
  });
  it('without loss lasts as long as the plain division says, with loss never longer', () => {
    fc.assert(
      fc.property(between(0, 1e6), between(10, 5000), between(0, 15), (eatenLb, dailyDemandLb, lossPercentPerMonth) => {
        const plain = grazingDays({ eatenLb, dailyDemandLb });
        near(standingFeedDays({ eatenLb, dailyDemandLb, lossPercentPerMonth: 0 }), plain);
        expect(standingFeedDays({ eatenLb, dailyDemandLb, lossPercentPerMonth })).toBeLessThanOrEqual(plain * (1 + 1e-12));
      }),
    );
  });
});
