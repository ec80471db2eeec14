import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { forageBetweenSitesGPerM2, forageOfYearGPerM2 } from '../../calculators/math/growth/forageBetweenSitesGPerM2.ts';
import { daysToMass, logisticGrowthLbPerAcDay, logisticMass, ratePerDay } from '../../calculators/math/growth/logisticMass.ts';
import { relativeYield } from '../../calculators/math/growth/relativeYield.ts';
import { rateForPeak, type Sward, swardDay } from '../../calculators/math/growth/swardDay.ts';
import { temperatureResponse } from '../../calculators/math/growth/temperatureResponse.ts';
import { waterLimitedGrowthLbPerAc } from '../../calculators/math/growth/waterLimitedGrowthLbPerAc.ts';
import { growthTemperatures } from '../../calculators/tables/growthTemperatures.ts';
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
  const rates = fc.record({ senescenceShare: between(0, 0.03), weatheringShare: between(0, 0.02) });
  it('only gains what grew and loses what weathered', () => {
    fc.assert(
      fc.property(sward, rates, between(0, 1), between(0, 3000), ({ massLbPerAc, ...rest }, shares, response, deadLbPerAc) => {
        const day = swardDay({ ...rest, ...shares, greenLbPerAc: massLbPerAc, deadLbPerAc, response });
        const change = day.greenLbPerAc + day.deadLbPerAc - massLbPerAc - deadLbPerAc;
        expect(Math.abs(change - day.grownLbPerAc + deadLbPerAc * shares.weatheringShare)).toBeLessThan(1e-8);
        expect(day.grownLbPerAc).toBeGreaterThanOrEqual(0);
        expect(day.greenLbPerAc).toBeGreaterThan(0);
      }),
    );
  });
  it('has no more room than the ceiling leaves above what is dead', () => {
    // Of 4,000 lb 1,000 are dead: 2,900 green can gain 100 at most, 3,000 nothing.
    const day = { deadLbPerAc: 1000, ceilingLbPerAc: 4000, ratePerDay: 1, response: 1, senescenceShare: 0, weatheringShare: 0 };
    const { grownLbPerAc } = swardDay({ ...day, greenLbPerAc: 2900 });
    expect(grownLbPerAc).toBeGreaterThan(0);
    expect(grownLbPerAc).toBeLessThan(100);
    expect(swardDay({ ...day, greenLbPerAc: 3000 }).grownLbPerAc).toBe(0);
  });
  it('lets what grew that day die at the same share as the rest', () => {
    // A fifth of 1,000 dead pounds rots away, a tenth of all that is green by the evening takes its place.
    const day = {
      greenLbPerAc: 2000,
      deadLbPerAc: 1000,
      ceilingLbPerAc: 6000,
      ratePerDay: 0.5,
      response: 1,
      senescenceShare: 0.1,
      weatheringShare: 0.2,
    };
    const { greenLbPerAc, deadLbPerAc, grownLbPerAc } = swardDay(day);
    expect(grownLbPerAc).toBeGreaterThan(100);
    expect(Math.abs(greenLbPerAc - 0.9 * (2000 + grownLbPerAc))).toBeLessThan(1e-9);
    expect(Math.abs(deadLbPerAc - (800 + 0.1 * (2000 + grownLbPerAc)))).toBeLessThan(1e-9);
  });
  it('peaks at the yield that it was fitted to', () => {
    const responses = Array.from({ length: 365 }, (_, index) => Math.max(0, Math.sin((Math.PI * (index - 90)) / 180)));
    fc.assert(
      fc.property(rates, between(1000, 6000), (shares, peakLbPerAc) => {
        const season = { startLbPerAc: 150, ceilingLbPerAc: 1.3 * peakLbPerAc, ...shares };
        const rate = rateForPeak({ responses, peakLbPerAc, ...season });
        let state: Sward = { greenLbPerAc: season.startLbPerAc, deadLbPerAc: 0 };
        let peak = 0;
        for (const response of responses) {
          state = swardDay({ ...state, ...shares, ratePerDay: rate, ceilingLbPerAc: season.ceilingLbPerAc, response });
          peak = Math.max(peak, state.greenLbPerAc + state.deadLbPerAc);
        }
        expect(Math.abs(peak - peakLbPerAc)).toBeLessThan(1e-6 * peakLbPerAc);
      }),
      { numRuns: 20 },
    );
  });
});
