import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coreDensity } from '../../calculators/math/soil/coreDensity.ts';
import { daysToGrowthShare, daysToStress } from '../../calculators/math/soil/daysToStress.ts';
import { densityStanding } from '../../calculators/math/soil/densityStanding.ts';
import { dryWeightG, gravimetricWaterPercent } from '../../calculators/math/soil/gravimetricWaterPercent.ts';
import { groundCover } from '../../calculators/math/soil/groundCover.ts';
import { pointsToSettle } from '../../calculators/math/soil/pointsToSettle.ts';
import { porosityPercent, waterFilledPorePercent } from '../../calculators/math/soil/porosityPercent.ts';
import { probeSummary } from '../../calculators/math/soil/probeSummary.ts';
import { rootsStoppedPercent } from '../../calculators/math/soil/rootsStoppedPercent.ts';
import { rootZoneWater } from '../../calculators/math/soil/rootZoneWater.ts';
import { saltLossPercent } from '../../calculators/math/soil/saltLossPercent.ts';
import { slakeClass } from '../../calculators/math/soil/slakeClass.ts';
import { slakeSummary } from '../../calculators/math/soil/slakeSummary.ts';
import { stonySoil } from '../../calculators/math/soil/stonySoil.ts';
import { textureClass } from '../../calculators/math/soil/textureClass.ts';
import { waterAtTensionInPerIn } from '../../calculators/math/soil/waterAtTensionInPerIn.ts';
import { waterRetention } from '../../calculators/math/soil/waterRetention.ts';
import { expectWithin } from '../support/expectWithin.ts';
import { between } from '../support/numbers.ts';

/** The twelve rules as the soil survey writes them, each on its own: they must neither overlap nor leave a gap. */
const rules: Readonly<Record<string, (sand: number, silt: number, clay: number) => boolean>> = {
  sand: (_, silt, clay) => silt + 1.5 * clay < 15,
  'loamy-sand': (_, silt, clay) => silt + 1.5 * clay >= 15 && silt + 2 * clay < 30,
  'sandy-loam': (sand, silt, clay) =>
    (clay >= 7 && clay < 20 && sand > 52 && silt + 2 * clay >= 30) || (clay < 7 && silt < 50 && silt + 2 * clay >= 30),
  loam: (sand, silt, clay) => clay >= 7 && clay < 27 && silt >= 28 && silt < 50 && sand <= 52,
  'silt-loam': (_, silt, clay) => (silt >= 50 && clay >= 12 && clay < 27) || (silt >= 50 && silt < 80 && clay < 12),
  silt: (_, silt, clay) => silt >= 80 && clay < 12,
  'sandy-clay-loam': (sand, silt, clay) => clay >= 20 && clay < 35 && silt < 28 && sand > 45,
  'clay-loam': (sand, _, clay) => clay >= 27 && clay < 40 && sand > 20 && sand <= 45,
  'silty-clay-loam': (sand, _, clay) => clay >= 27 && clay < 40 && sand <= 20,
  'sandy-clay': (sand, _, clay) => clay >= 35 && sand > 45,
  'silty-clay': (_, silt, clay) => clay >= 40 && silt >= 40,
  clay: (sand, silt, clay) => clay >= 40 && sand <= 45 && silt < 40,
};

/** Corner points of the triangle's classes in percent clay and sand, as the soiltexture package draws them. */
const polygons: Readonly<Record<string, readonly (readonly [clay: number, sand: number])[]>> = {
  clay: [
    [100, 0],
    [55, 45],
    [40, 45],
    [40, 20],
    [60, 0],
  ],
  'silty-clay': [
    [60, 0],
    [40, 20],
    [40, 0],
  ],
  'sandy-clay': [
    [55, 45],
    [35, 65],
    [35, 45],
  ],
  'silty-clay-loam': [
    [40, 20],
    [27.5, 20],
    [27.5, 0],
    [40, 0],
  ],
  'sandy-clay-loam': [
    [35, 65],
    [20, 80],
    [20, 52.5],
    [27.5, 45],
    [35, 45],
  ],
};

describe('texture', () => {
  it('puts every point of the 1 % grid in exactly one class, the one whose rule it meets', () => {
    for (let sand = 0; sand <= 100; sand += 1) {
      for (let clay = 0; clay <= 100 - sand; clay += 1) {
        const met = Object.keys(rules).filter((name) => rules[name]?.(sand, 100 - sand - clay, clay));
        expect(met, `${sand} % sand, ${clay} % clay`).toEqual([textureClass(sand, clay)]);
      }
    }
  });
  it('agrees with the drawn polygons well inside them', () => {
    for (const [name, corners] of Object.entries(polygons)) {
      const center = [0, 1].map((axis) => corners.reduce((sum, corner) => sum + (corner[axis] ?? 0), 0) / corners.length);
      fc.assert(
        fc.property(fc.nat(corners.length - 1), between(0, 0.85), (at, reach) => {
          const [clay = 0, sand = 0] = [0, 1].map((axis) => (center[axis] ?? 0) + reach * ((corners[at]?.[axis] ?? 0) - (center[axis] ?? 0)));
          expect(textureClass(sand, clay)).toBe(name);
        }),
      );
    }
  });
  it('is not thrown off by sums that miss a limit by a rounding error', () => {
    expect(textureClass(7.7, 12.3)).toBe('silt-loam');
    expect(textureClass(8.1, 11.9)).toBe('silt');
    expect(() => textureClass(60, 41)).toThrow('textureClass needs clayPercent');
  });
});

describe('water retention', () => {
  const soil = fc.record({ sandPercent: between(10, 80), clayPercent: between(8, 20), organicMatterPercent: between(0.5, 4) });
  it('orders wilting point, field capacity, saturation, and falls with tension', () => {
    fc.assert(
      fc.property(soil, between(0, 1500), between(0, 1500), (of, oneKPa, otherKPa) => {
        const retention = waterRetention(of);
        expect(retention.wiltingPointInPerIn).toBeLessThan(retention.fieldCapacityInPerIn);
        expect(retention.fieldCapacityInPerIn).toBeLessThan(retention.saturationInPerIn);
        const [wet, dry] = [Math.min(oneKPa, otherKPa), Math.max(oneKPa, otherKPa)].map((kPa) => waterAtTensionInPerIn(retention, kPa));
        expect(wet).toBeGreaterThanOrEqual(dry ?? 1);
      }),
    );
  });
  it('gives back field capacity at 33 kPa and wilting point at 1,500 kPa, packed or not', () => {
    fc.assert(
      fc.property(soil, between(0.95, 1.1), (of, densityFactor) => {
        const retention = waterRetention({ ...of, densityFactor });
        expectWithin(waterAtTensionInPerIn(retention, 33) / retention.fieldCapacityInPerIn, 1, 5e-13);
        expectWithin(waterAtTensionInPerIn(retention, 1500) / retention.wiltingPointInPerIn, 1, 5e-11);
      }),
    );
  });
  it('lets packing take pores and conductivity', () => {
    fc.assert(
      fc.property(soil, (of) => {
        const loose = waterRetention(of);
        const packed = waterRetention({ ...of, densityFactor: 1.1 });
        expectWithin(packed.densityGPerCm3 / loose.densityGPerCm3, 1.1, 5e-13);
        expect(packed.saturationInPerIn).toBeLessThan(loose.saturationInPerIn);
        expect(packed.conductivityMmPerH).toBeLessThan(loose.conductivityMmPerH);
      }),
    );
  });
  it('refuses soils outside the equations, and those where they fail', () => {
    expect(() => waterRetention({ sandPercent: 20, clayPercent: 65, organicMatterPercent: 2 })).toThrow(RangeError);
    expect(() => waterRetention({ sandPercent: 90, clayPercent: 0, organicMatterPercent: 0.5 })).toThrow(RangeError);
    expect(() => waterRetention({ sandPercent: 40, clayPercent: 60, organicMatterPercent: 6 })).toThrow('saturation');
  });
  it('lets salt take more the more there is', () => {
    fc.assert(
      fc.property(between(0, 34), (salt) => {
        expect(saltLossPercent(salt + 1)).toBeGreaterThan(saltLossPercent(salt));
      }),
    );
  });
});

describe('root zone', () => {
  const layer = fc.record({
    thicknessIn: between(1, 24),
    availableInPerFt: between(0, 3),
    stoneVolumePercent: between(0, 80),
    filledPercent: between(0, 100),
  });
  it('adds up: held is there plus missing, and cutting a layer in two changes nothing', () => {
    fc.assert(
      fc.property(fc.array(layer, { minLength: 1, maxLength: 5 }), between(0.1, 0.999), (layers, part) => {
        // Not to the very bottom: halves do not add up to the last bit.
        const rootDepthIn = part * layers.reduce((sum, { thicknessIn }) => sum + thicknessIn, 0);
        const whole = rootZoneWater(layers, rootDepthIn);
        const halves = layers.flatMap((each) => [
          { ...each, thicknessIn: each.thicknessIn / 2 },
          { ...each, thicknessIn: each.thicknessIn / 2 },
        ]);
        expectWithin(whole.hasIn + whole.missingIn, whole.holdsIn, 5e-11);
        expectWithin(rootZoneWater(halves, rootDepthIn).holdsIn, whole.holdsIn, 5e-9);
      }),
    );
  });
  it('refuses roots below the layers', () => {
    expect(() => rootZoneWater([{ thicknessIn: 12, availableInPerFt: 2, stoneVolumePercent: 0, filledPercent: 50 }], 13)).toThrow('rootDepthIn');
  });
  it('takes the days that small steps of the stress equation take', () => {
    fc.assert(
      fc.property(between(1, 10), between(0, 0.9), between(0.3, 0.7), between(0.05, 0.4), between(0.1, 0.9), (total, gone, easyShare, use, share) => {
        const start = { totalAvailableIn: total, missingIn: gone * total, easyShare, useInPerDay: use };
        const stepDays = 0.02;
        let missingIn = start.missingIn;
        let days = 0;
        const growth = () => Math.min(1, (total - missingIn) / ((1 - easyShare) * total));
        while (growth() > share) {
          missingIn += use * growth() * stepDays;
          days += stepDays;
        }
        expect(Math.abs(daysToGrowthShare({ ...start, growthShare: share }) - days)).toBeLessThan(0.05 + 0.001 * days);
      }),
      { numRuns: 40 },
    );
  });
  it('waits no time for what is so today, and as long for full growth lost as for stress', () => {
    const start = { totalAvailableIn: 6, missingIn: 1, easyShare: 0.6, useInPerDay: 0.2 };
    expect(daysToGrowthShare({ ...start, growthShare: 1 })).toBe(daysToStress(start));
    expect(daysToStress({ ...start, missingIn: 5 })).toBe(0);
    expect(daysToGrowthShare({ ...start, missingIn: 6, growthShare: 0.25 })).toBe(0);
  });
});

describe('packed soil', () => {
  it('weighs water out and in again', () => {
    fc.assert(
      fc.property(between(10, 500), between(0, 60), (dryG, percent) => {
        expectWithin(dryWeightG(dryG * (1 + percent / 100), percent), dryG, 5e-9);
        expectWithin(gravimetricWaterPercent(dryG * (1 + percent / 100), dryG), percent, 5e-7);
      }),
    );
  });
  it('gets the fine earth back from a stony core, and its pores full at saturation', () => {
    fc.assert(
      fc.property(between(0.9, 1.8), between(0, 60), (fine, stones) => {
        const whole = stonySoil(stones, fine);
        const core = coreDensity({ dryG: 100 * whole.densityGPerCm3, volumeCm3: 100, stoneG: stones * whole.densityGPerCm3 });
        expectWithin(core.fineGPerCm3, fine, 5e-9);
        expectWithin(core.stoneVolumePercent, whole.stoneVolumePercent, 5e-9);
        expectWithin(waterFilledPorePercent(porosityPercent(fine) / fine, fine), 100, 5e-9);
      }),
    );
  });
  it('never calls tighter soil better', () => {
    const rank = { open: 0, between: 1, limiting: 2, stopping: 3 } as const;
    const list = fc.constantFrom('three-groups', 'by-class', 'critical-range', 'seven-rows');
    fc.assert(
      fc.property(list, fc.constantFrom('sand', 'silt', 'clay'), between(0.8, 2), between(0.01, 0.5), (name, texture, density, more) => {
        const [loose, tight] = [densityStanding(name, texture, density), densityStanding(name, texture, density + more)];
        expect(rank[tight ?? 'open']).toBeGreaterThanOrEqual(rank[loose ?? 'stopping']);
      }),
    );
  });
  it('counts the holes that stopped', () => {
    expect(probeSummary([Infinity, Infinity])).toEqual({ stoppedPercent: 0, medianStopIn: undefined, degree: 'little' });
    expect(probeSummary([4, 6, 8, 10]).degree).toBe('severe');
  });
});

describe('slake, cover, roots', () => {
  it('gives a fragment that holds longer, or leaves more, no lower class', () => {
    fc.assert(
      fc.property(between(0.1, 400), between(0, 100), between(0, 100), between(0, 100), (seconds, more, left, leftMore) => {
        const low = slakeClass({ halfLostSeconds: seconds, leftPercent: left });
        expect(slakeClass({ halfLostSeconds: seconds + more, leftPercent: Math.min(100, left + leftMore) })).toBeGreaterThanOrEqual(low);
      }),
    );
  });
  it('keeps the mean between the ends, and no spread for like fragments', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 2, maxLength: 18 }), (classes) => {
        const { meanClass, spread } = slakeSummary(classes);
        expect(meanClass).toBeGreaterThanOrEqual(Math.min(...classes));
        expect(meanClass).toBeLessThanOrEqual(Math.max(...classes));
        expect(spread === 0).toBe(new Set(classes).size === 1);
      }),
    );
  });
  it('holds the count inside its interval, and mirrors bare for covered', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), between(0, 1), (points, share) => {
        const hits = Math.round(share * points);
        const { coverPercent, lowPercent, highPercent } = groundCover({ hits, points });
        const bare = groundCover({ hits: points - hits, points });
        expect(lowPercent).toBeLessThanOrEqual(coverPercent);
        expect(highPercent).toBeGreaterThanOrEqual(coverPercent);
        expectWithin(bare.lowPercent, 100 - highPercent, 5e-7);
      }),
    );
  });
  const sharesFrom = (limitPercent: number): readonly number[] =>
    Array.from({ length: 101 }, (_, sharePercent) => sharePercent).filter((sharePercent) => Math.abs(sharePercent - limitPercent) >= 4);
  it.each([30, 50, 70, 75])('asks for about as many points as clear %i percent by the exact interval, at every share', (limitPercent) => {
    for (const sharePercent of sharesFrom(limitPercent)) {
      const points = pointsToSettle({ sharePercent, limitPercent });
      const clears = (walked: number) => {
        const hits = (sharePercent / 100) * walked;
        const isAbove = sharePercent > limitPercent;
        const { lowPercent, highPercent } = groundCover({ hits: isAbove ? Math.ceil(hits - 1e-9) : Math.floor(hits + 1e-9), points: walked });
        return isAbove ? lowPercent > limitPercent : highPercent < limitPercent;
      };
      // The formula is near the exact interval, not on it, and counts are whole: two in a hundred and a few more decide; far fewer never do.
      expect(clears(Math.ceil(1.02 * points) + 4), `${sharePercent} with more`).toBe(true);
      expect(clears(Math.max(1, Math.floor(0.4 * points) - 2)), `${sharePercent} with fewer`).toBe(false);
    }
  });
  it('stops more roots the more is taken, within the four tests', () => {
    fc.assert(
      fc.property(between(0, 80), between(0, 10), (removed, more) => {
        const [less, worse] = [rootsStoppedPercent(removed), rootsStoppedPercent(removed + more)];
        expect(worse.meanPercent).toBeGreaterThanOrEqual(less.meanPercent);
        expect(less.lowPercent).toBeLessThanOrEqual(less.meanPercent);
        expect(less.highPercent).toBeGreaterThanOrEqual(less.meanPercent);
      }),
    );
  });
});
