import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coverShares } from '../../calculators/math/growth/coverShares.ts';
import { dyingShare } from '../../calculators/math/growth/dyingShare.ts';
import { forageBetweenSitesGPerM2, forageOfYearGPerM2 } from '../../calculators/math/growth/forageBetweenSitesGPerM2.ts';
import { daysToMass, logisticGrowthLbPerAcDay, logisticMass, ratePerDay } from '../../calculators/math/growth/logisticMass.ts';
import { regrowthLbPerAcDay } from '../../calculators/math/growth/regrowthLbPerAcDay.ts';
import { relativeYield } from '../../calculators/math/growth/relativeYield.ts';
import { springFlush } from '../../calculators/math/growth/springFlush.ts';
import { temperatureResponse } from '../../calculators/math/growth/temperatureResponse.ts';
import { waterLimitedGrowthLbPerAc } from '../../calculators/math/growth/waterLimitedGrowthLbPerAc.ts';
import { growthTemperatures } from '../../calculators/tables/growthTemperatures.ts';
import { near } from '../support/near.ts';
import { between } from '../support/numbers.ts';

const sward = fc
  .tuple(between(500, 8000), between(0.02, 0.98), between(0.005, 0.2))
  .map(([ceilingLbPerAc, part, rate]) => ({ ceilingLbPerAc, massLbPerAc: part * ceilingLbPerAc, ratePerDay: rate }));

describe('logistic regrowth', () => {
  it('goes there and back, and two stretches make one', () => {
    fc.assert(
      fc.property(sward, between(0.1, 30), between(0.1, 30), (start, first, second) => {
        const middle = logisticMass({ ...start, days: first });
        const end = logisticMass({ ...start, massLbPerAc: middle, days: second });
        expect(Math.abs(end / logisticMass({ ...start, days: first + second }) - 1)).toBeLessThan(1e-12);
        const days = daysToMass({ ...start, targetLbPerAc: middle });
        if (middle < 0.999 * start.ceilingLbPerAc) expect(Math.abs(Number(days) - first)).toBeLessThan(1e-8 * (1 + first));
      }),
    );
  });
  it('is fastest at half the ceiling, with the growth that gave the rate', () => {
    fc.assert(
      fc.property(sward, between(10, 150), (start, best) => {
        const rate = Math.min(1, ratePerDay(best, start.ceilingLbPerAc));
        const at = (massLbPerAc: number) => logisticGrowthLbPerAcDay({ ...start, massLbPerAc, ratePerDay: rate });
        expect(at(start.massLbPerAc)).toBeLessThanOrEqual(at(start.ceilingLbPerAc / 2) + 1e-9);
        if (rate < 1) expect(Math.abs(at(start.ceilingLbPerAc / 2) - best)).toBeLessThan(1e-9);
      }),
    );
  });
  it('has no number of days without growth or beyond the ceiling', () => {
    const start = { massLbPerAc: 500, ceilingLbPerAc: 3000 };
    expect(daysToMass({ ...start, ratePerDay: 0, targetLbPerAc: 1000 })).toBe('not-without-growth');
    expect(daysToMass({ ...start, ratePerDay: 0.1, targetLbPerAc: 3000 })).toBe('never');
    for (const targetLbPerAc of [400, 500]) expect(daysToMass({ ...start, ratePerDay: 0, targetLbPerAc })).toBe(0);
    // What stands at the ceiling has reached it.
    expect(daysToMass({ ...start, massLbPerAc: 3000, ratePerDay: 0.1, targetLbPerAc: 3000 })).toBe(0);
  });
});

describe('warmth and water', () => {
  it('response is nothing outside the published limits, whole in the best range, and between elsewhere', () => {
    for (const group of Object.values(growthTemperatures)) {
      const corners = { startF: group.startF.value, bestFromF: group.bestFromF.value, bestToF: group.bestToF.value, stopF: group.stopF.value };
      fc.assert(
        fc.property(between(-20, 130), (meanF) => {
          const response = temperatureResponse({ meanF, ...corners });
          if (meanF <= corners.startF || meanF >= corners.stopF) expect(response).toBe(0);
          else if (meanF >= corners.bestFromF && meanF <= corners.bestToF) expect(response).toBe(1);
          else expect(response > 0 && response < 1).toBe(true);
        }),
      );
    }
  });
  it('growth is in proportion to water, yield falls with the want of it', () => {
    fc.assert(
      fc.property(between(0, 30), between(0, 800), (inches, efficiency) => {
        expect(Math.abs(waterLimitedGrowthLbPerAc(2 * inches, efficiency) - 2 * inches * efficiency)).toBeLessThan(1e-9);
      }),
    );
    fc.assert(
      fc.property(between(0, 2), between(0, 1), between(0, 1), (factor, first, second) => {
        expect(relativeYield(factor, Math.max(first, second))).toBeGreaterThanOrEqual(relativeYield(factor, Math.min(first, second)));
        expect(relativeYield(factor, 1)).toBe(1);
      }),
    );
  });
  it('rain does less from year to year than from site to site, and neither line leaves its range', () => {
    fc.assert(
      fc.property(between(200, 500), between(1, 100), (rain, more) => {
        const years = forageOfYearGPerM2(rain + more) - forageOfYearGPerM2(rain);
        expect(years).toBeLessThan(forageBetweenSitesGPerM2(rain + more) - forageBetweenSitesGPerM2(rain));
      }),
    );
    expect(() => forageBetweenSitesGPerM2(199)).toThrow(RangeError);
    expect(() => forageOfYearGPerM2(601)).toThrow(RangeError);
  });
});

describe('the sward day by day', () => {
  const day = { greenLbPerAc: 1000, deadLbPerAc: 0, crownLbPerAc: 0, ceilingLbPerAc: 4000, ratePerDay: 0.001, response: 1 };
  it('grows as the logistic curve does, where a day is short', () => {
    fc.assert(
      fc.property(sward, ({ massLbPerAc, ceilingLbPerAc }) => {
        const grown = regrowthLbPerAcDay({ ...day, greenLbPerAc: massLbPerAc, ceilingLbPerAc });
        const curve = logisticMass({ massLbPerAc, ceilingLbPerAc, ratePerDay: day.ratePerDay, days: 1 }) - massLbPerAc;
        expect(Math.abs(grown - curve)).toBeLessThan(0.001 * grown + 1e-9);
      }),
    );
  });
  it('has no more room than the ceiling leaves above all that stands, and never shrinks by growing', () => {
    expect(regrowthLbPerAcDay({ ...day, greenLbPerAc: 3000, deadLbPerAc: 1000 })).toBe(0);
    expect(regrowthLbPerAcDay({ ...day, greenLbPerAc: 3000, deadLbPerAc: 1500 })).toBe(0);
    expect(regrowthLbPerAcDay({ ...day, greenLbPerAc: 3000, deadLbPerAc: 500 })).toBeGreaterThan(0);
  });
  it('starts again from the crown where nothing green is left', () => {
    expect(regrowthLbPerAcDay({ ...day, greenLbPerAc: 0 })).toBe(0);
    near(regrowthLbPerAcDay({ ...day, greenLbPerAc: 0, crownLbPerAc: 150, ratePerDay: 0.1 }), 15, 1e-12);
  });
  it('dies sooner without water and after a hard frost', () => {
    const shares = { byAge: 0.008, byDrought: 0.012, byFrost: 0.03 };
    near(dyingShare({ ...shares, waterShare: 1, isHardFrost: false }), 0.008, 1e-15);
    near(dyingShare({ ...shares, waterShare: 0, isHardFrost: false }), 0.02, 1e-15);
    near(dyingShare({ ...shares, waterShare: 0, isHardFrost: true }), 0.05, 1e-15);
    expect(() => dyingShare({ waterShare: 0, isHardFrost: false, byAge: 0.5, byDrought: 0.4, byFrost: 0.2 })).toThrow('all three together');
  });
  it('flushes in spring, has no jump, and does nothing where both levels are one', () => {
    const corners = { low: 0.7, high: 1.3, firstC: 775, secondC: 1450 };
    for (const [degreeDaysC, level] of [
      [0, 0.7],
      [200, 0.7],
      [575, 1.3],
      [675, 1.3],
      [1450, 0.7],
      [3000, 0.7],
    ] as const) {
      near(springFlush({ ...corners, degreeDaysC }), level, 1e-12);
    }
    fc.assert(
      fc.property(between(0, 2000), (degreeDaysC) => {
        const step = springFlush({ ...corners, degreeDaysC: degreeDaysC + 0.01 }) - springFlush({ ...corners, degreeDaysC });
        expect(Math.abs(step)).toBeLessThan(1e-4);
        expect(springFlush({ ...corners, low: 1, high: 1, degreeDaysC })).toBe(1);
      }),
    );
  });
  it('covers more with more of anything, never the whole, and lets bare ground keep its base', () => {
    const per = { baseShare: 0.15, perGreenAcPerLb: 0.00118, perDeadAcPerLb: 0.0006, perLitterAcPerLb: 0.001 };
    const of = (greenLbPerAc: number, deadLbPerAc: number, litterLbPerAc: number) =>
      coverShares({ ...per, greenLbPerAc, deadLbPerAc, litterLbPerAc });
    near(of(0, 0, 0).groundShare, 0.15, 1e-12);
    fc.assert(
      fc.property(between(0, 4000), between(0, 4000), between(0, 4000), between(1, 500), (green, dead, litter, more) => {
        const { groundShare, greenShare } = of(green, dead, litter);
        expect(groundShare).toBeLessThanOrEqual(1);
        expect(greenShare).toBeLessThanOrEqual(groundShare);
        for (const other of [of(green + more, dead, litter), of(green, dead + more, litter), of(green, dead, litter + more)]) {
          expect(other.groundShare).toBeGreaterThanOrEqual(groundShare);
        }
      }),
    );
  });
});
