import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AntecedentPair, antecedentByFormula } from '../../calculators/math/runoff/antecedentByFormula.ts';
import { antecedentCurveNumber } from '../../calculators/math/runoff/antecedentCurveNumber.ts';
import { compositeCurveNumber, compositeRunoffIn } from '../../calculators/math/runoff/compositeCurveNumber.ts';
import { conditionClass, type Grazing } from '../../calculators/math/runoff/conditionClass.ts';
import { curveNumberByCover } from '../../calculators/math/runoff/curveNumberByCover.ts';
import { curveNumberFromStorm } from '../../calculators/math/runoff/curveNumberFromStorm.ts';
import { hardSurfaceCurveNumber } from '../../calculators/math/runoff/hardSurfaceCurveNumber.ts';
import { lagHours } from '../../calculators/math/runoff/lagHours.ts';
import { peakFlowCfs, pondFactor, unitPeakCsmPerIn } from '../../calculators/math/runoff/peakFlowCfs.ts';
import { retentionByDepletionIn } from '../../calculators/math/runoff/retentionByDepletionIn.ts';
import { retentionIn } from '../../calculators/math/runoff/retentionIn.ts';
import { slopeCurveNumber } from '../../calculators/math/runoff/slopeCurveNumber.ts';
import { ratioRetentionIn, stormRunoffIn } from '../../calculators/math/runoff/stormRunoffIn.ts';
import { agriculturalCovers, type Cover, cultivatedCovers, rangeCovers } from '../../calculators/tables/curveNumbers.ts';
import { between } from '../support/numbers.ts';

const rain = between(0, 30);
const number = between(5, 100);
const ratio = fc.constantFrom(0.2 as const, 0.05 as const);
const share = between(0, 1);
const percent = between(0, 100);
const grazing = fc.constantFrom<Grazing>('rested', 'light', 'moderate', 'heavy');
const humid = { poorBelowPercent: 50, goodAbovePercent: 75 };
const slack = 1e-9;

describe('runoff of a storm', () => {
  it('is never more than the rain, grows with rain and with curve number', () => {
    fc.assert(
      fc.property(rain, between(0, 5), number, share, ratio, (rainIn, more, curveNumber, up, abstractionRatio) => {
        const runoff = stormRunoffIn({ rainIn, curveNumber, abstractionRatio });
        expect(runoff).toBeGreaterThanOrEqual(0);
        expect(runoff).toBeLessThanOrEqual(rainIn + slack);
        expect(stormRunoffIn({ rainIn: rainIn + more, curveNumber, abstractionRatio })).toBeGreaterThanOrEqual(runoff - slack);
        const higher = curveNumber + up * (100 - curveNumber);
        expect(stormRunoffIn({ rainIn, curveNumber: higher, abstractionRatio })).toBeGreaterThanOrEqual(runoff - slack);
      }),
    );
  });
  it('is all of the rain at curve number 100', () => {
    fc.assert(
      fc.property(rain, ratio, (rainIn, abstractionRatio) => {
        expect(Math.abs(stormRunoffIn({ rainIn, curveNumber: 100, abstractionRatio }) - rainIn)).toBeLessThan(slack);
      }),
    );
  });
  it('gives the curve number back under either convention', () => {
    fc.assert(
      fc.property(rain, between(5, 99.9), ratio, (rainIn, curveNumber, abstractionRatio) => {
        const runoffIn = stormRunoffIn({ rainIn, curveNumber, abstractionRatio });
        fc.pre(runoffIn > 1e-4);
        expect(Math.abs(curveNumberFromStorm({ rainIn, runoffIn, abstractionRatio }) - curveNumber)).toBeLessThan(1e-6);
      }),
    );
  });
  it('begins earlier under the ratio 0.05', () => {
    fc.assert(
      fc.property(between(30, 95), (curveNumber) => {
        const rainIn = 0.2 * retentionIn(curveNumber);
        expect(stormRunoffIn({ rainIn, curveNumber, abstractionRatio: 0.05 })).toBeGreaterThan(0);
        expect(stormRunoffIn({ rainIn, curveNumber, abstractionRatio: 0.2 })).toBeLessThan(slack);
      }),
    );
  });
  it('refuses a measured runoff above the rain', () => {
    expect(() => curveNumberFromStorm({ rainIn: 1, runoffIn: 1.1, abstractionRatio: 0.2 })).toThrow(RangeError);
    expect(() => stormRunoffIn({ rainIn: -1, curveNumber: 70, abstractionRatio: 0.2 })).toThrow(RangeError);
    expect(() => stormRunoffIn({ rainIn: 1, curveNumber: 0, abstractionRatio: 0.2 })).toThrow(RangeError);
  });
});

describe('parts of an area', () => {
  const part = fc.record({ areaAc: between(0.1, 500), curveNumber: number });
  it('average between the least and the greatest, whatever their order or size', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), rain, ratio, (parts, rainIn, abstractionRatio) => {
        const numbers = parts.map(({ curveNumber }) => curveNumber);
        const composite = compositeCurveNumber(parts);
        expect(composite).toBeGreaterThanOrEqual(Math.min(...numbers) - slack);
        expect(composite).toBeLessThanOrEqual(Math.max(...numbers) + slack);
        const runoff = compositeRunoffIn({ parts, rainIn, abstractionRatio });
        const again = compositeRunoffIn({
          parts: parts.toReversed().map(({ areaAc, curveNumber }) => ({ areaAc: 3 * areaAc, curveNumber })),
          rainIn,
          abstractionRatio,
        });
        expect(Math.abs(again - runoff)).toBeLessThan(slack);
      }),
    );
  });
});

describe('wetness before the storm', () => {
  it('orders dry, average and wet, by table and by formula', () => {
    fc.assert(
      fc.property(percent, fc.constantFrom<AntecedentPair>('hawkins-1985', 'chow-1988'), (curveNumber, pair) => {
        expect(antecedentCurveNumber(curveNumber, 'dry')).toBeLessThanOrEqual(curveNumber);
        expect(antecedentCurveNumber(curveNumber, 'wet')).toBeGreaterThanOrEqual(curveNumber);
        expect(antecedentByFormula(curveNumber, 'dry', pair)).toBeLessThanOrEqual(curveNumber + slack);
        expect(antecedentByFormula(curveNumber, 'wet', pair)).toBeGreaterThanOrEqual(curveNumber - slack);
      }),
    );
  });
  it('never falls as the curve number rises, and stays within 2.5 of both formula pairs', () => {
    fc.assert(
      fc.property(percent, share, fc.constantFrom('dry' as const, 'wet' as const), (curveNumber, up, condition) => {
        const ours = antecedentCurveNumber(curveNumber, condition);
        expect(antecedentCurveNumber(curveNumber + up * (100 - curveNumber), condition)).toBeGreaterThanOrEqual(ours - slack);
        for (const pair of ['hawkins-1985', 'chow-1988'] as const) {
          expect(Math.abs(antecedentByFormula(curveNumber, condition, pair) - ours)).toBeLessThan(2.6);
        }
      }),
    );
  });
  it('runs from the wet to the dry retention as the top foot empties', () => {
    fc.assert(
      fc.property(number, share, ratio, (curveNumber, depletedShare, abstractionRatio) => {
        const at = (each: number) => retentionByDepletionIn({ curveNumber, depletedShare: each, abstractionRatio });
        expect(Math.abs(at(0) - ratioRetentionIn(antecedentCurveNumber(curveNumber, 'wet'), abstractionRatio))).toBeLessThan(slack);
        expect(Math.abs(at(1) / ratioRetentionIn(antecedentCurveNumber(curveNumber, 'dry'), abstractionRatio) - 1) || 0).toBeLessThan(slack);
        expect(at(depletedShare)).toBeGreaterThanOrEqual(at(0) - slack);
        expect(at(depletedShare)).toBeLessThanOrEqual(at(1) + slack);
      }),
    );
  });
});

describe('slope and hard surfaces', () => {
  it('leave the number alone at 5 % and raise it with slope, never past 100', () => {
    fc.assert(
      fc.property(number, percent, percent, (curveNumber, one, other) => {
        expect(Math.abs(slopeCurveNumber(curveNumber, 5) - curveNumber)).toBeLessThan(0.002);
        const [flat, steep] = [slopeCurveNumber(curveNumber, Math.min(one, other)), slopeCurveNumber(curveNumber, Math.max(one, other))];
        expect(flat).toBeLessThanOrEqual(steep + slack);
        expect(steep).toBeLessThanOrEqual(100 + slack);
      }),
    );
  });
  it('lie between the open ground and 98, less where water crosses ground first', () => {
    fc.assert(
      fc.property(between(5, 98), percent, share, (groundCurveNumber, hardPercent, unconnectedShare) => {
        const whole = hardSurfaceCurveNumber({ groundCurveNumber, hardPercent, unconnectedShare });
        expect(whole).toBeGreaterThanOrEqual(groundCurveNumber - slack);
        expect(whole).toBeLessThanOrEqual(hardSurfaceCurveNumber({ groundCurveNumber, hardPercent, unconnectedShare: 0 }) + slack);
        expect(whole).toBeLessThanOrEqual(98 + slack);
      }),
    );
  });
});

describe('condition of the cover', () => {
  const rank = { poor: 0, fair: 1, good: 2 } as const;
  it('never gets worse with cover nor better with grazing', () => {
    const order: readonly Grazing[] = ['rested', 'light', 'moderate', 'heavy'];
    fc.assert(
      fc.property(percent, share, grazing, (groundCoverPercent, up, each) => {
        const now = rank[conditionClass({ groundCoverPercent, grazing: each, ...humid })];
        const fuller = groundCoverPercent + up * (100 - groundCoverPercent);
        expect(rank[conditionClass({ groundCoverPercent: fuller, grazing: each, ...humid })]).toBeGreaterThanOrEqual(now);
        for (const harder of order.slice(order.indexOf(each))) {
          expect(rank[conditionClass({ groundCoverPercent, grazing: harder, ...humid })]).toBeLessThanOrEqual(now);
        }
      }),
    );
  });
  it('is poor under heavy grazing at any cover', () => {
    fc.assert(
      fc.property(percent, (groundCoverPercent) => {
        expect(conditionClass({ groundCoverPercent, grazing: 'heavy', ...humid })).toBe('poor');
      }),
    );
  });
  it('falls without cliffs from the poor number to the good one', () => {
    fc.assert(
      fc.property(percent, (groundCoverPercent) => {
        const at = (each: number) => curveNumberByCover({ groundCoverPercent: each, poor: 79, fair: 69, good: 61, ...humid });
        expect(at(groundCoverPercent)).toBeLessThanOrEqual(79);
        expect(at(groundCoverPercent)).toBeGreaterThanOrEqual(61);
        expect(at(groundCoverPercent) - at(Math.min(100, groundCoverPercent + 0.1))).toBeLessThan(0.04);
      }),
    );
    const at = (groundCoverPercent: number) => curveNumberByCover({ groundCoverPercent, poor: 79, fair: 69, good: 61, ...humid });
    expect([at(0), at(25), at(62.5), at(87.5), at(100)]).toEqual([79, 79, 69, 61, 61]);
  });
  it('is printed so that poor is never below good, nor group A above D', () => {
    const covers: readonly Cover[] = [
      ...Object.values(agriculturalCovers.covers),
      ...Object.values(rangeCovers.covers),
      ...Object.values(cultivatedCovers.covers).flatMap(({ treatments }) => Object.values(treatments)),
    ];
    for (const { conditions } of covers) {
      const printed: readonly (readonly (number | null)[])[] = Object.values(conditions).map(({ a, b, c, d }) => [a, b, c, d]);
      for (const numbers of printed) {
        const known = numbers.filter((each) => each !== null);
        expect(known).toEqual(known.toSorted((one, other) => one - other));
      }
      for (const [index, worse] of printed.entries()) {
        for (const better of printed.slice(index + 1)) {
          better.forEach((each, group) => {
            expect(each ?? 0).toBeLessThanOrEqual(worse[group] ?? 0);
          });
        }
      }
    }
  });
});

describe('lag and peak', () => {
  it('lag shortens with slope and curve number, lengthens with the way', () => {
    fc.assert(
      fc.property(between(100, 20000), between(50, 94), between(0.5, 30), (flowLengthFt, curveNumber, slopePercent) => {
        const lag = lagHours({ flowLengthFt, curveNumber, slopePercent });
        expect(Math.abs(lagHours({ flowLengthFt, curveNumber, slopePercent: 4 * slopePercent }) - lag / 2)).toBeLessThan(slack);
        expect(lagHours({ flowLengthFt, curveNumber: curveNumber + 1, slopePercent })).toBeLessThan(lag);
        expect(lagHours({ flowLengthFt: 2 * flowLengthFt, curveNumber, slopePercent })).toBeGreaterThan(lag);
      }),
    );
  });
  it('peak falls with time of concentration and with abstraction for types II and III', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('ii' as const, 'iii' as const),
        between(0.1, 5),
        between(0, 0.6),
        (rainType, concentrationHours, abstractionShare) => {
          const at = (hours: number, abstracted: number) => unitPeakCsmPerIn({ rainType, abstractionShare: abstracted, concentrationHours: hours });
          const peak = at(concentrationHours, abstractionShare);
          expect(at(concentrationHours * 1.5, abstractionShare)).toBeLessThan(peak);
          expect(at(concentrationHours, abstractionShare + 0.05)).toBeLessThanOrEqual(peak + slack);
        },
      ),
    );
  });
  it('peak is in proportion to area and runoff, and ponds only lower it', () => {
    fc.assert(
      fc.property(between(0, 5), rain, (pondPercent, runoffIn) => {
        const pondShareFactor = pondFactor(pondPercent);
        expect(pondShareFactor).toBeLessThanOrEqual(1);
        expect(pondShareFactor).toBeGreaterThanOrEqual(0.72);
        const one = peakFlowCfs({ unitPeak: 300, areaAc: 640, runoffIn, pondShareFactor });
        expect(Math.abs(one - 300 * runoffIn * pondShareFactor)).toBeLessThan(slack);
      }),
    );
  });
});
