import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { designStormShare, designStormSteps, designStormStretches } from '../../calculators/math/infiltration/designStormShare.ts';
import { geometricMean } from '../../calculators/math/infiltration/geometricMean.ts';
import { greenAmptDepthCm, greenAmptHours, greenAmptRateCmPerHr } from '../../calculators/math/infiltration/greenAmptDepthCm.ts';
import { infiltrationClass } from '../../calculators/math/infiltration/infiltrationClass.ts';
import { pondingDepthCm, pondingHours } from '../../calculators/math/infiltration/pondingHours.ts';
import { ringOverRead } from '../../calculators/math/infiltration/ringOverRead.ts';
import { ringTest } from '../../calculators/math/infiltration/ringTest.ts';
import { steadyRateFit } from '../../calculators/math/infiltration/steadyRateFit.ts';
import { stormInfiltration } from '../../calculators/math/infiltration/stormInfiltration.ts';
import { scatterFactor, visitRatio } from '../../calculators/math/infiltration/visitRatio.ts';
import { greenAmptTextures } from '../../calculators/tables/greenAmptTextures.ts';
import { between } from '../support/numbers.ts';

const orNothing = (min: number, max: number) => fc.oneof(fc.constant(0), between(min, max));
const soil = fc.record({ conductivityCmPerHr: between(0.01, 12), suctionCm: orNothing(0.01, 60), moistureDeficit: orNothing(0.001, 0.5) });
const thirsty = fc.record({ conductivityCmPerHr: between(0.01, 12), suctionCm: between(1, 60), moistureDeficit: between(0.02, 0.5) });
const hours = between(0, 48);
const rainType = fc.constantFrom('i' as const, 'ia' as const, 'ii' as const, 'iii' as const);
const steps = fc.array(fc.record({ hours: between(0.05, 3), rainCm: between(0, 8) }), { minLength: 1, maxLength: 12 });

describe('soaking in under water', () => {
  it('soaks in by the first terms of the series in the first moments', () => {
    // F − ln(1 + F) with G of 1 cm and K of 1 cm an hour: F²/2 − F³/3 + F⁴/4 − F⁵/5, here F = 0.00009 cm.
    const soil = { conductivityCmPerHr: 1, suctionCm: 2, moistureDeficit: 0.5 };
    const depthCm = 9e-5;
    const byHand = depthCm ** 2 / 2 - depthCm ** 3 / 3 + depthCm ** 4 / 4 - depthCm ** 5 / 5;
    expect(Math.abs(greenAmptHours({ depthCm, soil, startCm: 0 }) / byHand - 1)).toBeLessThan(5e-14);
  });
  it('solves the implicit equation to 1e-10', () => {
    fc.assert(
      fc.property(soil, hours, between(0, 20), (each, time, startCm) => {
        const depthCm = greenAmptDepthCm({ hours: time, soil: each, startCm });
        const pull = each.suctionCm * each.moistureDeficit;
        const logTerm = pull === 0 ? 0 : pull * Math.log1p((depthCm - startCm) / (startCm + pull));
        const goal = each.conductivityCmPerHr * time;
        expect(Math.abs(depthCm - startCm - logTerm - goal)).toBeLessThanOrEqual(1e-10 * Math.max(1, goal));
      }),
    );
  });
  it('stays finite for pulls and times next to nothing', () => {
    fc.assert(
      fc.property(
        between(0.01, 12),
        between(0, 60),
        between(0, 0.5),
        hours,
        between(0, 20),
        (conductivityCmPerHr, suctionCm, deficit, time, startCm) => {
          const depthCm = greenAmptDepthCm({ hours: time, soil: { conductivityCmPerHr, suctionCm, moistureDeficit: deficit }, startCm });
          expect(Number.isFinite(depthCm)).toBe(true);
          expect(depthCm).toBeGreaterThanOrEqual(startCm);
        },
      ),
    );
  });
  it('runs back to the time', () => {
    fc.assert(
      fc.property(soil, between(0.01, 48), between(0, 20), (each, time, startCm) => {
        const depthCm = greenAmptDepthCm({ hours: time, soil: each, startCm });
        expect(Math.abs(greenAmptHours({ depthCm, soil: each, startCm }) - time)).toBeLessThan(1e-8 * Math.max(1, 1 / each.conductivityCmPerHr));
      }),
    );
  });
  it('takes at least what the conductivity passes, and slows down to it', () => {
    fc.assert(
      fc.property(soil, hours, (each, time) => {
        const depthCm = greenAmptDepthCm({ hours: time, soil: each, startCm: 0 });
        expect(depthCm).toBeGreaterThanOrEqual(each.conductivityCmPerHr * time - 1e-9);
        if (depthCm > 0) expect(greenAmptRateCmPerHr(depthCm, each)).toBeGreaterThanOrEqual(each.conductivityCmPerHr);
        if (depthCm > 0) expect(greenAmptRateCmPerHr(1e9, each) / each.conductivityCmPerHr).toBeLessThan(1.001);
      }),
    );
  });
  it('needs no more than its time in two halves', () => {
    fc.assert(
      fc.property(soil, hours, (each, time) => {
        const half = greenAmptDepthCm({ hours: time / 2, soil: each, startCm: 0 });
        const whole = greenAmptDepthCm({ hours: time, soil: each, startCm: 0 });
        expect(Math.abs(greenAmptDepthCm({ hours: time / 2, soil: each, startCm: half }) - whole)).toBeLessThan(1e-7);
      }),
    );
  });
});

describe('a storm on the ground', () => {
  it('loses no water, and no row runs off more than it rained', () => {
    fc.assert(
      fc.property(steps, soil, (bursts, each) => {
        const result = stormInfiltration({ steps: bursts, soil: each });
        const rained = bursts.reduce((sum, { rainCm }) => sum + rainCm, 0);
        expect(Math.abs(result.infiltratedCm + result.runoffCm - rained)).toBeLessThan(1e-9);
        for (const row of result.rows) {
          expect(row.runoffCm).toBeGreaterThanOrEqual(-1e-9);
          expect(row.runoffCm).toBeLessThanOrEqual(row.rainCm + 1e-9);
          expect(row.pondedHours).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });
  it('does not depend on how the rain is cut into steps', () => {
    fc.assert(
      fc.property(steps, soil, fc.integer({ min: 2, max: 5 }), (bursts, each, pieces) => {
        const cut = bursts.flatMap((burst) => Array.from({ length: pieces }, () => ({ hours: burst.hours / pieces, rainCm: burst.rainCm / pieces })));
        const [whole, fine] = [stormInfiltration({ steps: bursts, soil: each }), stormInfiltration({ steps: cut, soil: each })];
        expect(Math.abs(fine.runoffCm - whole.runoffCm)).toBeLessThan(1e-6);
      }),
    );
  });
  it('stands when steady rain has gone on for the ponding time, and not before', () => {
    fc.assert(
      fc.property(thirsty, between(1.05, 20), (each, factor) => {
        const rate = factor * each.conductivityCmPerHr;
        const time = pondingHours(rate, each);
        const rainFor = (duration: number) => stormInfiltration({ steps: [{ hours: duration, rainCm: rate * duration }], soil: each });
        expect(rainFor(time * 0.99).firstPondedHours).toBeNull();
        expect(Math.abs((rainFor(time * 1.01).firstPondedHours ?? 0) - time)).toBeLessThan(1e-9 * time);
        expect(Math.abs(greenAmptRateCmPerHr(pondingDepthCm(rate, each), each) - rate)).toBeLessThan(1e-6 * rate);
      }),
    );
  });
  it('runs off nothing while the rain is no faster than the conductivity', () => {
    fc.assert(
      fc.property(soil, fc.array(between(0, 1), { minLength: 1, maxLength: 8 }), (each, shares) => {
        const gentle = shares.map((share) => ({ hours: 1, rainCm: share * each.conductivityCmPerHr }));
        expect(Math.abs(stormInfiltration({ steps: gentle, soil: each }).runoffCm)).toBeLessThan(1e-12);
      }),
    );
  });
  it('runs off less where the soil conducts better', () => {
    fc.assert(
      fc.property(steps, soil, between(1, 5), (bursts, each, factor) => {
        const better = { ...each, conductivityCmPerHr: each.conductivityCmPerHr * factor };
        expect(stormInfiltration({ steps: bursts, soil: better }).runoffCm).toBeLessThanOrEqual(
          stormInfiltration({ steps: bursts, soil: each }).runoffCm + 1e-7,
        );
      }),
    );
  });
});

describe('a design storm', () => {
  it('rises from nothing to all of the rain', () => {
    fc.assert(
      fc.property(rainType, between(0, 24), between(0, 24), (type, one, other) => {
        expect(designStormShare(type, Math.min(one, other))).toBeLessThanOrEqual(designStormShare(type, Math.max(one, other)));
        expect(designStormShare(type, 0)).toBe(0);
        expect(designStormShare(type, 24)).toBe(1);
      }),
    );
  });
  it('cuts a day into stretches that add up to the day and its rain', () => {
    for (const type of ['i', 'ia', 'ii', 'iii'] as const) {
      const stretches = designStormStretches(type, 10);
      expect(stretches.every(({ hours, rainCm }) => hours > 0 && rainCm >= 0)).toBe(true);
      expect(Math.abs(stretches.reduce((sum, { hours }) => sum + hours, 0) - 24)).toBeLessThan(1e-9);
      expect(Math.abs(stretches.reduce((sum, { rainCm }) => sum + rainCm, 0) - 10)).toBeLessThan(1e-9);
    }
  });
  it('adds up to the day', () => {
    fc.assert(
      fc.property(rainType, between(0, 40), fc.constantFrom(0.05, 0.1, 0.25, 0.5, 1, 2, 6, 24), (type, rainCm, stepHours) => {
        const cut = designStormSteps({ rainType: type, rainCm, stepHours });
        expect(Math.abs(cut.reduce((sum, step) => sum + step.rainCm, 0) - rainCm)).toBeLessThan(1e-9);
        expect(Math.abs(cut.reduce((sum, step) => sum + step.hours, 0) - 24)).toBeLessThan(1e-9);
      }),
    );
    expect(() => designStormSteps({ rainType: 'ii', rainCm: 1, stepHours: 7 })).toThrow(RangeError);
  });
});

describe('rings', () => {
  const rates = fc.array(between(0.01, 50), { minLength: 2, maxLength: 6 });
  it('add up over pourings, the last one leading', () => {
    fc.assert(
      fc.property(
        between(2, 24),
        fc.array(fc.record({ volumeMl: between(50, 2000), minutes: between(0.2, 600) }), { minLength: 1, maxLength: 6 }),
        (boreIn, pourings) => {
          const { rows, leadingRateInPerHr, repeated } = ringTest({ boreIn, pourings });
          const last = rows[rows.length - 1];
          expect(last?.rateInPerHr).toBe(leadingRateInPerHr);
          expect(repeated).toBe(pourings.length > 1);
          expect(Math.abs((last?.cumulativeIn ?? 0) - rows.reduce((sum, { depthIn }) => sum + depthIn, 0))).toBeLessThan(1e-9);
        },
      ),
    );
  });
  it('give back the sorptivity and the steady rate that made them', () => {
    fc.assert(
      fc.property(
        between(0, 5),
        between(0.05, 5),
        fc.uniqueArray(fc.integer({ min: 1, max: 200 }), { minLength: 2, maxLength: 6 }),
        (pull, steady, ticks) => {
          const points = ticks.map((tick) => tick / 50).map((time) => ({ elapsedHours: time, cumulativeIn: pull * Math.sqrt(time) + steady * time }));
          const fit = steadyRateFit(points);
          expect(Math.abs(fit.steadyInPerHr - steady)).toBeLessThan(1e-6);
          expect(Math.abs(fit.sorptivityInPerRootHr - pull)).toBeLessThan(1e-6);
        },
      ),
    );
  });
  it('compare the same way from either end and in any unit', () => {
    fc.assert(
      fc.property(rates, rates, between(0.1, 30), (earlier, later, unit) => {
        const there = visitRatio({ earlier, later, confidencePercent: 95 });
        const back = visitRatio({ earlier: later, later: earlier, confidencePercent: 95 });
        const other = visitRatio({ earlier: earlier.map((rate) => rate * unit), later: later.map((rate) => rate * unit), confidencePercent: 95 });
        expect(Math.abs(there.ratio * back.ratio - 1)).toBeLessThan(1e-9);
        expect(Math.abs(there.low * back.high - 1)).toBeLessThan(1e-9);
        expect(Math.abs(other.ratio / there.ratio - 1)).toBeLessThan(1e-9);
        expect(there.low).toBeLessThanOrEqual(there.ratio * (1 + 1e-12));
        expect(there.high).toBeGreaterThanOrEqual(there.ratio * (1 - 1e-12));
      }),
    );
  });
  it('have a middle between the slowest and the fastest', () => {
    fc.assert(
      fc.property(rates, (each) => {
        expect(geometricMean(each)).toBeGreaterThanOrEqual(Math.min(...each) * (1 - 1e-12));
        expect(geometricMean(each)).toBeLessThanOrEqual(Math.max(...each) * (1 + 1e-12));
      }),
    );
  });
  it('scatter less when there are more of them, and over-read less when they stand deeper', () => {
    const factor = (rings: number) => scatterFactor({ earlierRings: rings, laterRings: rings, variationPercent: 80, confidencePercent: 95 });
    for (let rings = 2; rings < 12; rings += 1) expect(factor(rings + 1)).toBeLessThan(factor(rings));
    fc.assert(
      fc.property(between(3, 24), between(0.5, 6), between(0, 2), between(0.5, 40), (boreIn, insertedIn, pondedIn, capillaryLengthIn) => {
        const ring = { boreIn, insertedIn, pondedIn, capillaryLengthIn };
        expect(ringOverRead(ring)).toBeGreaterThan(1);
        expect(ringOverRead({ ...ring, insertedIn: insertedIn + 1 })).toBeLessThan(ringOverRead(ring));
        expect(ringOverRead({ ...ring, boreIn: boreIn + 1 })).toBeLessThan(ringOverRead(ring));
      }),
    );
  });
});

describe('tables of infiltration', () => {
  it('put each limit into the faster class, except the fastest', () => {
    expect([0, 0.0014, 0.0015, 0.06, 0.2, 0.6, 2, 6, 20, 20.1].map(infiltrationClass)).toEqual([
      'impermeable',
      'impermeable',
      'very-slow',
      'slow',
      'moderately-slow',
      'moderate',
      'moderately-rapid',
      'rapid',
      'rapid',
      'very-rapid',
    ]);
  });
  it('leave room for water below the porosity and trap air in every texture', () => {
    for (const each of Object.values(greenAmptTextures.textures)) {
      expect(each.effectivePorosity).toBeLessThan(each.porosity);
      expect(each.conductivityCmPerHr).toBeLessThan(each.saturatedCmPerHr);
    }
  });
});
