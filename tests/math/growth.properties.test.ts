import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coverShares } from '../../calculators/math/growth/coverShares.ts';
import { dyingShare } from '../../calculators/math/growth/dyingShare.ts';
import { forageBetweenSitesGPerM2, forageOfYearGPerM2 } from '../../calculators/math/growth/forageBetweenSitesGPerM2.ts';
import { regrowthLbPerAcDay } from '../../calculators/math/growth/regrowthLbPerAcDay.ts';
import { springFlush } from '../../calculators/math/growth/springFlush.ts';
import { temperatureResponse } from '../../calculators/math/growth/temperatureResponse.ts';
import { growthTemperatures } from '../../calculators/tables/growthTemperatures.ts';
import { near } from '../support/near.ts';
import { between } from '../support/numbers.ts';

const sward = fc
  .tuple(between(500, 8000), between(0.02, 0.98), between(0.005, 0.2))
  .map(([ceilingLbPerAc, part, rate]) => ({ ceilingLbPerAc, massLbPerAc: part * ceilingLbPerAc, ratePerDay: rate }));

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
        // The curve of that rate in its closed form, after one day.
        const curve = ceilingLbPerAc / (1 + (ceilingLbPerAc / massLbPerAc - 1) * Math.exp(-day.ratePerDay)) - massLbPerAc;
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
