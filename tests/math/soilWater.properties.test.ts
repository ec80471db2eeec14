import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysToGrowthShare, daysToStress } from '../../calculators/math/soil/daysToStress.ts';
import { maximumCoefficient } from '../../calculators/math/soilWater/climateCoefficient.ts';
import { depletionFraction } from '../../calculators/math/soilWater/depletionFraction.ts';
import { dualCoefficientDay } from '../../calculators/math/soilWater/dualCoefficientDay.ts';
import { evaporableWaterMm } from '../../calculators/math/soilWater/evaporableWaterMm.ts';
import { exposedShare } from '../../calculators/math/soilWater/exposedShare.ts';
import { leafCoefficient } from '../../calculators/math/soilWater/leafCoefficient.ts';
import { leafWaterDay } from '../../calculators/math/soilWater/leafWaterDay.ts';
import { type DayOrder, rootZoneDay } from '../../calculators/math/soilWater/rootZoneDay.ts';
import { stressCoefficient } from '../../calculators/math/soilWater/stressCoefficient.ts';
import { topFootDay } from '../../calculators/math/soilWater/topFootDay.ts';
import { near } from '../support/near.ts';
import { between } from '../support/numbers.ts';

const order = fc.constantFrom<DayOrder>('start-of-day', 'after-rain');
const share = between(0, 1);
const weather = fc.array(fc.record({ rainMm: fc.oneof(fc.constant(0), between(0, 90)), referenceMm: between(0, 12) }), {
  minLength: 1,
  maxLength: 60,
});
const soil = fc.record({ totalAvailableMm: between(20, 300), fill: share, depletionFraction: between(0.1, 0.8), dayOrder: order });

describe('the root zone with one coefficient', () => {
  it('closes to a billionth and stays within its limits, whatever the weather', () => {
    fc.assert(
      fc.property(soil, weather, ({ totalAvailableMm, fill, ...rest }, days) => {
        const start = fill * totalAvailableMm;
        let depletionMm = start;
        let sum = 0;
        for (const { rainMm, referenceMm } of days) {
          const day = rootZoneDay({ ...rest, depletionMm, totalAvailableMm, rainMm, cropUseMm: referenceMm });
          sum += rainMm - day.useMm - day.drainageMm;
          depletionMm = day.depletionMm;
          expect(depletionMm).toBeGreaterThanOrEqual(0);
          expect(depletionMm).toBeLessThanOrEqual(totalAvailableMm);
          expect(day.useMm).toBeLessThanOrEqual(referenceMm + 1e-12);
        }
        expect(Math.abs(sum + depletionMm - start)).toBeLessThan(1e-9);
      }),
    );
  });
  it('differs between the two orders only on days with rain', () => {
    fc.assert(
      fc.property(soil, between(0, 12), ({ totalAvailableMm, fill, depletionFraction: fraction }, cropUseMm) => {
        const inputs = { depletionMm: fill * totalAvailableMm, rainMm: 0, cropUseMm, totalAvailableMm, depletionFraction: fraction };
        expect(rootZoneDay({ ...inputs, dayOrder: 'after-rain' })).toEqual(rootZoneDay({ ...inputs, dayOrder: 'start-of-day' }));
      }),
    );
  });
  it('with the handbook day, drains 17 mm one way and 11.5 the other', () => {
    // Example 38 of FAO-56: 40 mm on a soil that lacks 23, use 5.5; it prints the first.
    const inputs = { depletionMm: 23, rainMm: 40, cropUseMm: 5.5, totalAvailableMm: 39, depletionFraction: 0.6 };
    expect(rootZoneDay({ ...inputs, dayOrder: 'after-rain' }).drainageMm).toBe(17);
    expect(rootZoneDay({ ...inputs, dayOrder: 'start-of-day' }).drainageMm).toBe(11.5);
  });
});

describe('stress', () => {
  it('starts at the readily available water, ends at the wilting point, and only grows in between', () => {
    fc.assert(
      fc.property(between(20, 300), between(0.1, 0.8), share, share, (totalAvailableMm, fraction, first, second) => {
        const at = (part: number) => stressCoefficient({ depletionMm: part * totalAvailableMm, totalAvailableMm, depletionFraction: fraction });
        expect(at(fraction)).toBeGreaterThan(1 - 1e-9);
        expect(at(1)).toBe(0);
        expect(at(Math.max(first, second))).toBeLessThanOrEqual(at(Math.min(first, second)) + 1e-12);
      }),
    );
  });
  it('takes no less than a tenth of the water for easy, and no more than eight tenths', () => {
    // Allen 1998, chapter 8: 0.1 and 0.8 bound p. 0.2 + 0.04 (5 − 10) is 0, and 0.8 + 0.04 × 5 is 1.
    expect([depletionFraction(0.2, 10), depletionFraction(0.8, 0)]).toEqual([0.1, 0.8]);
  });
  it('comes sooner on thirsty days', () => {
    fc.assert(
      fc.property(between(0.1, 0.8), between(0, 15), between(0, 5), (fraction, use, more) => {
        expect(depletionFraction(fraction, use + more)).toBeLessThanOrEqual(depletionFraction(fraction, use));
      }),
    );
  });
});

describe('days of water', () => {
  const stored = fc.record({ totalAvailableIn: between(1, 12), gone: share, depletionFraction: between(0.2, 0.8), useInPerDay: between(0.05, 0.4) });
  it('agree with the daily balance in fine steps', () => {
    fc.assert(
      fc.property(stored, between(0.1, 0.9), ({ gone, ...rest }, useShare) => {
        const { totalAvailableIn, depletionFraction: fraction, useInPerDay } = rest;
        const steps = 400;
        let depletionMm = gone * totalAvailableIn;
        let days = 0;
        const stress = () => stressCoefficient({ depletionMm, totalAvailableMm: totalAvailableIn, depletionFraction: fraction });
        while (stress() > useShare && days < 2000) {
          const cropUseMm = useInPerDay / steps;
          depletionMm = rootZoneDay({
            depletionMm,
            rainMm: 0,
            cropUseMm,
            totalAvailableMm: totalAvailableIn,
            depletionFraction: fraction,
            dayOrder: 'start-of-day',
          }).depletionMm;
          days += 1 / steps;
        }
        const ours = daysToGrowthShare({
          totalAvailableIn,
          useInPerDay,
          easyShare: fraction,
          missingIn: gone * totalAvailableIn,
          growthShare: useShare,
        });
        expect(Math.abs(ours - days)).toBeLessThan(0.02 + 0.002 * days);
      }),
      { numRuns: 15 },
    );
  });
  it('to full use are the days to stress, and a quarter comes after that', () => {
    fc.assert(
      fc.property(stored, ({ gone, ...rest }) => {
        const { totalAvailableIn, useInPerDay, depletionFraction: easyShare } = rest;
        const inputs = { totalAvailableIn, useInPerDay, easyShare, missingIn: gone * totalAvailableIn };
        expect(Math.abs(daysToGrowthShare({ ...inputs, growthShare: 1 }) - daysToStress(inputs))).toBeLessThan(1e-9);
        expect(daysToGrowthShare({ ...inputs, growthShare: 0.25 })).toBeGreaterThanOrEqual(daysToGrowthShare({ ...inputs, growthShare: 0.5 }));
      }),
    );
  });
});

describe('plants and bare ground apart', () => {
  const ground = fc.record({
    totalAvailableMm: between(40, 200),
    fill: share,
    surfaceFill: share,
    depletionFraction: between(0.2, 0.8),
    basalCoefficient: between(0, 1.1),
    exposedShare: between(0.01, 1),
    evaporableMm: between(8, 28),
    dayOrder: order,
  });
  it('closes to a billionth and stays within its limits, whatever the weather', () => {
    fc.assert(
      fc.property(ground, weather, ({ fill, surfaceFill, ...rest }, days) => {
        const start = fill * rest.totalAvailableMm;
        let depletionMm = start;
        let surfaceDepletionMm = surfaceFill * rest.evaporableMm;
        let sum = 0;
        for (const each of days) {
          const inputs = { ...rest, ...each, surfaceDepletionMm, depletionMm, maximumCoefficient: 1.2, readilyEvaporableMm: 6 };
          const day = dualCoefficientDay(inputs);
          sum += each.rainMm - day.evaporationMm - day.transpirationMm - day.drainageMm;
          ({ depletionMm } = day);
          surfaceDepletionMm = Math.min(rest.evaporableMm, day.surfaceDepletionMm);
          expect(day.surfaceDepletionMm).toBeLessThanOrEqual(rest.evaporableMm + 1e-9);
          expect(Math.min(day.evaporationMm, day.transpirationMm, day.drainageMm, depletionMm)).toBeGreaterThanOrEqual(0);
          expect(depletionMm).toBeLessThanOrEqual(rest.totalAvailableMm + 1e-9);
          expect(day.evaporationMm + day.transpirationMm).toBeLessThanOrEqual(1.2 * each.referenceMm + 1e-9);
          depletionMm = Math.min(rest.totalAvailableMm, depletionMm);
        }
        expect(Math.abs(sum + depletionMm - start)).toBeLessThan(1e-9);
      }),
    );
  });
  it('bare ground does not save water: after rain it loses more than shaded ground evaporates', () => {
    const day = (coverShare: number, litterShare: number) =>
      dualCoefficientDay({
        surfaceDepletionMm: 0,
        depletionMm: 0,
        rainMm: 0,
        referenceMm: 5,
        basalCoefficient: leafCoefficient({ fullCoefficient: 0.95, bareCoefficient: 0.15, greenShare: coverShare }),
        maximumCoefficient: 1.2,
        exposedShare: exposedShare(coverShare, litterShare),
        readilyEvaporableMm: 9,
        evaporableMm: 20,
        totalAvailableMm: 100,
        depletionFraction: 0.6,
        dayOrder: 'after-rain',
      });
    fc.assert(
      fc.property(between(0, 0.5), between(0, 0.5), between(0.01, 0.5), (cover, litter, more) => {
        expect(day(cover, litter).evaporationMm).toBeGreaterThanOrEqual(day(cover + more, Math.min(litter, 1 - cover - more)).evaporationMm - 1e-9);
        expect(day(cover, Math.min(litter + more, 1 - cover)).evaporationMm).toBeLessThanOrEqual(day(cover, litter).evaporationMm + 1e-9);
        expect(day(cover + more, 0).transpirationMm).toBeGreaterThan(day(cover, 0).transpirationMm);
      }),
    );
  });
});

describe('rain caught by grass and litter', () => {
  it('goes on, dries, or is still held; what dries is taken from the day’s use', () => {
    fc.assert(
      fc.property(between(0, 60), between(0, 5), between(0, 5), between(0, 10), (keptMm, storeMm, heldMm, referenceMm) => {
        const day = leafWaterDay({ keptMm, storeMm, heldMm, referenceMm });
        expect(Math.abs(keptMm + heldMm - day.throughMm - day.driedMm - day.heldMm)).toBeLessThan(1e-9);
        expect(Math.abs(referenceMm - day.driedMm - day.referenceLeftMm)).toBeLessThan(1e-9);
        expect(Math.min(day.throughMm, day.driedMm, day.heldMm, day.referenceLeftMm)).toBeGreaterThanOrEqual(0);
        expect(day.heldMm).toBeLessThanOrEqual(storeMm);
      }),
    );
  });
  it('drips off a sward that was grazed down', () => {
    // 1.8 mm hung on tall grass; a short one holds 1.0 (Thurow 1987), so 0.8 drip, and a day without sun dries nothing.
    const day = leafWaterDay({ keptMm: 0, storeMm: 1, heldMm: 1.8, referenceMm: 0 });
    near(day.throughMm, 0.8, 1e-12);
    near(day.heldMm, 1, 1e-12);
  });
});

describe('the top foot', () => {
  const layers = fc
    .record({ topAvailableMm: between(5, 80), more: between(0, 150), topFill: share, fill: share, rootShareInTop: share })
    .map(({ topAvailableMm, more, topFill, fill, ...rest }) => {
      const topDepletionMm = topFill * topAvailableMm;
      return { ...rest, topAvailableMm, availableMm: topAvailableMm + more, topDepletionMm, depletionMm: topDepletionMm + fill * more };
    });
  it('misses no more than it holds, no more than the whole, and leaves the layer below within its own limits', () => {
    fc.assert(
      fc.property(layers, between(0, 80), share, share, (layer, throughMm, evaporates, transpires) => {
        const wetAll = Math.max(0, layer.depletionMm - throughMm);
        const evaporationMm = evaporates * Math.min(layer.availableMm - wetAll, layer.topAvailableMm - Math.max(0, layer.topDepletionMm - throughMm));
        const transpirationMm = transpires * (layer.availableMm - wetAll - evaporationMm);
        const top = topFootDay({ ...layer, throughMm, evaporationMm, transpirationMm });
        const all = wetAll + evaporationMm + transpirationMm;
        expect(top).toBeGreaterThanOrEqual(0);
        expect(top).toBeLessThanOrEqual(layer.topAvailableMm);
        expect(top).toBeLessThanOrEqual(all + 1e-9);
        expect(all - top).toBeLessThanOrEqual(layer.availableMm - layer.topAvailableMm + 1e-9);
      }),
    );
  });
  it('gives by roots times the water left in each layer', () => {
    // Both layers full, 60 mm each, eight tenths of the roots above: of 5 mm the top gives 4.
    const full = { topDepletionMm: 0, topAvailableMm: 60, depletionMm: 0, availableMm: 120, rootShareInTop: 0.8, throughMm: 0, evaporationMm: 0 };
    near(topFootDay({ ...full, transpirationMm: 5 }), 4, 1e-12);
    // The top half empty: 0.8 × 0.5 against 0.2 × 1, two thirds.
    near(topFootDay({ ...full, topDepletionMm: 30, depletionMm: 30, transpirationMm: 3 }), 32, 1e-12);
  });
});

describe('what the handbook says in words', () => {
  it('lets a wet surface use a little more than the plants alone could', () => {
    // Allen and others, eq. 72: 0.05 above a basal coefficient that is past the first term.
    near(maximumCoefficient({ basalCoefficient: 1.4, windMPerS: 2, minHumidityPercent: 45, heightM: 0.3 }), 1.45, 0.5e-12);
  });
  it('lets leaf decide what plants drink', () => {
    // Eq. 97 by hand at a leaf area of 2: 0.15 + 0.8 (1 − e^−1.4) = 0.753.
    near(leafCoefficient({ greenShare: 1 - Math.exp(-0.7 * 2), fullCoefficient: 0.95, bareCoefficient: 0.15 }), 0.753, 0.0005);
  });
  it('takes 5 percent off for each 10 percent of mulch', () => {
    near(evaporableWaterMm({ fieldCapacityShare: 0.23, wiltingPointShare: 0.1, mulchShare: 0.4 }), 0.8 * 18, 0.5e-12);
  });
  it('has no more ground than there is', () => {
    expect(() => exposedShare(0.4, 0.61)).toThrow('needs litterShare');
  });
  it('puts water on the wetted ground alone, and asks of the soil before or after it', () => {
    const dry = {
      surfaceDepletionMm: 20,
      depletionMm: 40,
      rainMm: 4,
      referenceMm: 5,
      basalCoefficient: 0.15,
      maximumCoefficient: 1.2,
      exposedShare: 0.5,
      readilyEvaporableMm: 9,
      evaporableMm: 20,
      totalAvailableMm: 100,
      depletionFraction: 0.6,
    };
    // 4 mm over the field are 8 on the half that is wetted.
    near(dualCoefficientDay({ ...dry, referenceMm: 0, wettedShare: 0.5, dayOrder: 'after-rain' }).surfaceDepletionMm, 12, 0.5e-12);
    // Before the rain the surface is as dry as it gets, and nothing leaves it.
    const before = dualCoefficientDay({ ...dry, dayOrder: 'start-of-day' });
    expect([before.evaporationReduction, before.evaporationMm]).toEqual([0, 0]);
    expect(dualCoefficientDay({ ...dry, dayOrder: 'after-rain' }).evaporationMm).toBeGreaterThan(0.5);
  });
});
