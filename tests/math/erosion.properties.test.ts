import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { annualErosivity, monthlyErosivity } from '../../calculators/math/erosion/annualErosivity.ts';
import { contourPractice } from '../../calculators/math/erosion/contourPractice.ts';
import { erodibilityByNomograph, permeabilityCode } from '../../calculators/math/erosion/erodibilityByNomograph.ts';
import { erodibilityByTexture } from '../../calculators/math/erosion/erodibilityByTexture.ts';
import { landUsesLosingLike } from '../../calculators/math/erosion/landUsesLosingLike.ts';
import { pastureCoverFactor } from '../../calculators/math/erosion/pastureCoverFactor.ts';
import { rainErosivity } from '../../calculators/math/erosion/rainErosivity.ts';
import { irregularSlopeFactor, lengthExponent, type SlopeMethod, slopeFactor, steepness } from '../../calculators/math/erosion/slopeFactor.ts';
import { soilDepthIn, yearsPerInch } from '../../calculators/math/erosion/soilDepthIn.ts';
import { erodibilityMetric, erosivityMetric, erosivityUs, soilLossMetric } from '../../calculators/math/erosion/soilLossMetric.ts';
import { soilLossTonPerAc } from '../../calculators/math/erosion/soilLossTonPerAc.ts';
import { toleranceTonPerAc } from '../../calculators/math/erosion/toleranceTonPerAc.ts';
import { interpolated } from '../../calculators/math/special/interpolated.ts';
import { landUseCover } from '../../calculators/tables/cropCover.ts';
import { permeabilityScales } from '../../calculators/tables/erodibility.ts';
import { soilLossTolerance } from '../../calculators/tables/soilLossTolerance.ts';
import { expectWithin } from '../support/expectWithin.ts';
import { between } from '../support/numbers.ts';

const method = fc.constantFrom<SlopeMethod[]>('1978', '1997-low-rill', '1997-moderate-rill', '1997-high-rill');

describe('slope factor', () => {
  it('grows with length, always', () => {
    fc.assert(
      fc.property(method, between(15, 900), between(1, 100), between(0.2, 60), (by, lengthFt, moreFt, slope) => {
        expect(slopeFactor(lengthFt + moreFt, slope, by)).toBeGreaterThan(slopeFactor(lengthFt, slope, by));
      }),
    );
  });
  it('grows with steepness, always', () => {
    fc.assert(
      fc.property(method, between(0.2, 59), between(0.01, 1), (by, slope, more) => {
        expect(steepness(slope + more, by)).toBeGreaterThan(steepness(slope, by));
      }),
    );
  });
  it('makes the revision gentler than 1978 on steep slopes and on the flattest, as its authors say', () => {
    fc.assert(
      fc.property(between(12, 60), between(0.05, 0.4), (steep, flat) => {
        expect(steepness(steep, '1997-moderate-rill')).toBeLessThan(steepness(steep, '1978'));
        expect(steepness(flat, '1997-moderate-rill')).toBeLessThan(steepness(flat, '1978'));
      }),
    );
  });
  it('steps the exponent of 1978 where the handbook steps it', () => {
    // Wischmeier and Smith 1978, p. 12: 0.2 under 1 percent (from memory), 0.3 to 3, 0.4 from there, 0.5 from 5 percent up.
    const stepped = [0.99, 1, 3, 3.01, 4.99, 5].map((slope) => lengthExponent(slope, '1978'));
    expect(stepped).toEqual([0.2, 0.3, 0.3, 0.4, 0.4, 0.5]);
  });
  it('orders the three rill ratios', () => {
    fc.assert(
      fc.property(between(0.2, 60), (slope) => {
        const [low, moderate, high] = (['1997-low-rill', '1997-moderate-rill', '1997-high-rill'] as const).map((by) => lengthExponent(slope, by));
        expect(low).toBeLessThan(moderate ?? 0);
        expect(moderate).toBeLessThan(high ?? 0);
      }),
    );
  });
  it('gives an even slope, cut up anyhow, its own factor', () => {
    fc.assert(
      fc.property(method, fc.array(between(5, 100), { minLength: 3, maxLength: 8 }), between(0.2, 40), (by, lengths, slopePercent) => {
        const whole = irregularSlopeFactor(
          lengths.map((lengthFt) => ({ lengthFt, slopePercent })),
          by,
        );
        const lengthFt = lengths.reduce((sum, each) => sum + each, 0);
        expectWithin(whole.slopeFactor / slopeFactor(lengthFt, slopePercent, by), 1, 5e-11);
        expectWithin(
          whole.shares.reduce((sum, share) => sum + share, 0),
          1,
          5e-13,
        );
      }),
    );
  });
  it('charges a slope that steepens downhill more than one that flattens', () => {
    const [flat, steep] = [
      { lengthFt: 100, slopePercent: 4 },
      { lengthFt: 100, slopePercent: 12 },
    ];
    for (const by of ['1978', '1997-low-rill'] as const) {
      expect(irregularSlopeFactor([flat, steep], by).slopeFactor).toBeGreaterThan(irregularSlopeFactor([steep, flat], by).slopeFactor);
    }
  });
});

describe('soil loss', () => {
  const factors = fc.record({
    rainErosivity: between(1, 500),
    soilErodibility: between(0.01, 0.7),
    slopeFactor: between(0.05, 20),
    coverFactor: between(0.001, 1),
    practiceFactor: between(0.1, 1),
  });
  it('comes out the same through metric factors', () => {
    fc.assert(
      fc.property(factors, (of) => {
        const metric =
          erosivityMetric(of.rainErosivity) * erodibilityMetric(of.soilErodibility) * of.slopeFactor * of.coverFactor * of.practiceFactor;
        expectWithin(metric / soilLossMetric(soilLossTonPerAc(of)), 1, 5e-13);
        expectWithin(erosivityUs(erosivityMetric(of.rainErosivity)), of.rainErosivity, 5e-9);
      }),
    );
  });
  it('turns tons to inches and years and back', () => {
    fc.assert(
      fc.property(between(0.01, 100), between(0.8, 1.9), (loss, density) => {
        expectWithin(soilDepthIn(loss, density) * yearsPerInch(loss, density), 1, 5e-13);
      }),
    );
    expect(yearsPerInch(0, 1.3)).toBe(Infinity);
  });
});

describe('factors', () => {
  it('never rises with cover or canopy', () => {
    const ground = fc.record({ coverKind: fc.constantFrom('grass', 'weeds'), canopyHeight: fc.constantFrom('short-brush', 'tall-brush', 'trees') });
    fc.assert(
      fc.property(ground, between(0, 100), between(0, 100), between(0, 100), between(0, 100), (of, cover, moreCover, canopy, moreCanopy) => {
        const bare = pastureCoverFactor({ ...of, coverPercent: cover, canopyPercent: canopy });
        const covered = pastureCoverFactor({
          ...of,
          coverPercent: Math.min(100, cover + moreCover),
          canopyPercent: Math.min(100, canopy + moreCanopy),
        });
        expect(covered).toBeLessThanOrEqual(bare + 1e-12);
      }),
    );
  });
  it('gives weeds no less than grass, and higher canopies no less than lower ones', () => {
    fc.assert(
      fc.property(between(0, 100), between(0, 100), (coverPercent, canopyPercent) => {
        const at = (coverKind: 'grass' | 'weeds', canopyHeight: 'short-brush' | 'tall-brush' | 'trees') =>
          pastureCoverFactor({ coverPercent, canopyPercent, coverKind, canopyHeight }) + 1e-12;
        expect(at('weeds', 'trees')).toBeGreaterThanOrEqual(at('grass', 'trees') - 1e-12);
        expect(at('grass', 'trees')).toBeGreaterThanOrEqual(at('grass', 'tall-brush') - 1e-12);
        expect(at('grass', 'tall-brush')).toBeGreaterThanOrEqual(at('grass', 'short-brush') - 1e-12);
      }),
    );
  });
  it('lets organic matter hold soil, by both lists and by the nomograph', () => {
    fc.assert(
      fc.property(between(0, 3.9), between(0, 4), (organic, more) => {
        const soil = { siltVeryFineSandPercent: 60, clayPercent: 20, structureCode: 3, permeabilityCode: 3 } as const;
        expect(erodibilityByNomograph({ ...soil, organicMatterPercent: organic + more })).toBeLessThanOrEqual(
          erodibilityByNomograph({ ...soil, organicMatterPercent: organic }) + 1e-12,
        );
        for (const list of ['stewart-1975', 'stone-hilborn-2012'] as const) {
          expect(erodibilityByTexture('loam', organic + more, list) ?? 1).toBeLessThanOrEqual(erodibilityByTexture('loam', organic, list) ?? 0);
        }
      }),
    );
    expect(erodibilityByTexture('clay', 2, 'stewart-1975')).toBeUndefined();
    expect(erodibilityByTexture('silt', 2, 'stone-hilborn-2012')).toBeUndefined();
  });
  it('refuses what the nomograph has no answer for', () => {
    const sandy = { siltVeryFineSandPercent: 2, clayPercent: 2, organicMatterPercent: 4, structureCode: 1, permeabilityCode: 1 } as const;
    expect(() => erodibilityByNomograph(sandy)).toThrow('the K that follows');
    expect(() => erodibilityByNomograph({ ...sandy, siltVeryFineSandPercent: 75 })).toThrow('siltVeryFineSandPercent');
  });
  it('rises with rain without a step of a percent, and with how unevenly it falls', () => {
    fc.assert(
      fc.property(between(50, 2900), between(1, 100), (rain, more) => {
        expect(annualErosivity(rain + more)).toBeGreaterThan(annualErosivity(rain));
      }),
    );
    expectWithin(annualErosivity(850) / annualErosivity(849.999), 1, 5e-3);
    const even = Array.from({ length: 12 }, () => 40);
    const uneven = even.map((mm, month) => (month < 6 ? mm - 30 : mm + 30));
    expect(monthlyErosivity(uneven).erosivity).toBeGreaterThan(monthlyErosivity(even).erosivity);
    expectWithin(monthlyErosivity(even).fournierMm, 40, 5e-13);
  });
  it('tolerates no less on deeper soil', () => {
    fc.assert(
      fc.property(between(1, 100), between(0, 60), fc.boolean(), (depthIn, moreIn, renewable) => {
        expect(toleranceTonPerAc(depthIn + moreIn, renewable)).toBeGreaterThanOrEqual(toleranceTonPerAc(depthIn, renewable));
      }),
    );
  });
  it('halves contour work at least by strips, on shorter and narrower ground as it steepens', () => {
    fc.assert(
      fc.property(between(0.1, 24), between(0, 1), (slope, more) => {
        const [gentle, steep] = [contourPractice(slope), contourPractice(slope + more)];
        expect(steep.lengthLimitFt).toBeLessThanOrEqual(gentle.lengthLimitFt);
        expect(steep.stripWidthFt).toBeLessThanOrEqual(gentle.stripWidthFt);
        expectWithin(gentle.stripFactor, gentle.contourFactor / 2, 5e-13);
      }),
    );
    expect(() => contourPractice(26)).toThrow(RangeError);
  });
  it('reads between rows and holds the ends', () => {
    expect(interpolated(-5, [0, 1], [2, 3])).toBe(2);
    expect(interpolated(9, [0, 1], [2, 3])).toBe(3);
    expect(() => interpolated(0.5, [1, 0], [2, 3])).not.toThrow();
    expect(() => interpolated(2, [1, 0], [2, 3])).toThrow('above 1');
    expect(() => interpolated(2, [1], [2, 3])).toThrow('as many');
  });
});

describe('the line between two classes', () => {
  it('of monthly rain lies at an index of 55 mm', () => {
    const alike = (rainMm: number) => monthlyErosivity(Array.from({ length: 12 }, () => rainMm));
    // Twelve months alike have their own rain as the index. By hand: 95.77 − 6.081 · 100 + 0.4770 · 100², and so at 55; 0.7397 · 50^1.847 below.
    expectWithin(alike(100).erosivity, 4257.67, 0.005);
    expectWithin(alike(55).erosivity, 1204.24, 0.005);
    expectWithin(alike(50).erosivity, 0.7397 * Math.exp(1.847 * Math.log(50)), 1e-9);
  });
  it('of steepness lies at 9 percent, whose sine is 0.08964', () => {
    expectWithin(steepness(9, '1997-moderate-rill'), 16.8 * 0.089_638 - 0.5, 5e-5);
    expectWithin(steepness(8.99, '1997-moderate-rill'), 10.8 * 0.089_54 + 0.03, 5e-5);
  });
  it.each(['1978', '1997'] as const)('of permeability belongs to the faster class: %s', (scale) => {
    for (const [at, slowest] of permeabilityScales[scale].slowestInPerH.entries()) {
      expect([permeabilityCode(slowest, scale), permeabilityCode(slowest * 0.999, scale)]).toEqual([at + 1, at + 2]);
    }
  });
  it('of organic matter is below, of rooting depth is the shallower', () => {
    expect([2, 2.01].map((percent) => erodibilityByTexture('loam', percent, 'stone-hilborn-2012'))).toEqual([0.34, 0.26]);
    expect(erodibilityByTexture('clay', 2, 'stewart-1975')).toBeUndefined();
    for (const { toRootingDepthIn, renewable, nonRenewable } of soilLossTolerance.rows) {
      expect([toleranceTonPerAc(toRootingDepthIn, true), toleranceTonPerAc(toRootingDepthIn, false)]).toEqual([renewable, nonRenewable]);
    }
  });
  it('of a use of land is still inside its span', () => {
    for (const [use, { low, high }] of Object.entries(landUseCover.uses)) {
      for (const end of [low, high]) expect(landUsesLosingLike(end), `${use} at ${end}`).toContain(use);
    }
  });
  it('of what the nomograph can read is not crossed', () => {
    const soil = { siltVeryFineSandPercent: 60, clayPercent: 40, organicMatterPercent: 1, structureCode: 3, permeabilityCode: 5 };
    const read = (change: Partial<typeof soil>): unknown => Reflect.apply(erodibilityByNomograph, undefined, [{ ...soil, ...change }]);
    expect(read({})).toBeGreaterThan(0);
    for (const wrong of [{ clayPercent: 40.1 }, { structureCode: 2.5 }, { permeabilityCode: 4.5 }]) expect(() => read(wrong)).toThrow('needs');
  });
});

describe('a day’s share of the erosivity', () => {
  it('rises faster than the rain, and one storm beats two halves', () => {
    expect(rainErosivity(0)).toBe(0);
    fc.assert(
      fc.property(between(0.1, 150), (mm) => {
        expect(rainErosivity(2 * mm) / rainErosivity(mm)).toBeGreaterThan(3.5);
        expect(rainErosivity(mm)).toBeGreaterThan(2 * rainErosivity(mm / 2));
      }),
    );
  });
});
