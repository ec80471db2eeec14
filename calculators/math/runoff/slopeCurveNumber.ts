import { need } from '../need.ts';

/**
 * Curve number for a slope other than the 5 % that the tables stand for: CN + (CN3 − CN) / 3 × (1 − 2 e^(−13.86 s)), with CN = `curveNumber`,
 * s = `slopePercent` / 100 and CN3 = CN e^(0.00673 (100 − CN)), the wet number of the same source.
 * @param curveNumber - Curve number for average ground, no unit; above 0, at most 100
 * @param slopePercent - Slope of the ground, percent; 0 to 100
 * @returns Curve number for that slope, no unit, at most 100
 * @throws RangeError if a parameter is outside its range
 * @source williams-1995, adjustment of the curve number for slope
 * @example slopeCurveNumber(74, 5) //=> 74.00
 */
export function slopeCurveNumber(curveNumber: number, slopePercent: number): number {
  need('slopeCurveNumber', 'curveNumber', curveNumber, { above: 0, atMost: 100 });
  need('slopeCurveNumber', 'slopePercent', slopePercent, { atLeast: 0, atMost: 100 });
  const wetNumber = curveNumber * Math.exp(0.00673 * (100 - curveNumber));
  return curveNumber + ((wetNumber - curveNumber) / 3) * (1 - 2 * Math.exp(-13.86 * (slopePercent / 100)));
}
