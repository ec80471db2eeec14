import { need } from '../need.ts';
import type { AntecedentCondition } from './antecedentCurveNumber.ts';

/** The two published pairs of formulas that stand in for the table. They miss it by up to 2.5, so they are never mixed with it. */
export type AntecedentPair = 'hawkins-1985' | 'chow-1988';

/**
 * Curve number for dry or wet ground by a published formula pair instead of the table, with CN = `curveNumber`.
 * `hawkins-1985`: CN / (2.281 − 0.01281 CN) dry, CN / (0.427 + 0.00573 CN) wet.
 * `chow-1988`: 4.2 CN / (10 − 0.058 CN) dry, 23 CN / (10 + 0.13 CN) wet.
 * @param curveNumber - Curve number for average ground, no unit; 0 to 100
 * @param condition - Antecedent condition; `dry`, `average` or `wet`
 * @param pair - Which pair; `hawkins-1985` or `chow-1988`
 * @returns Curve number for that condition, no unit
 * @throws RangeError if `curveNumber` is outside 0 to 100
 * @source hawkins-1985, conversion formulas; chow-1988, eq. 5.5.7 and 5.5.8
 * @example antecedentByFormula(70, 'dry', 'chow-1988') //=> 49.49
 */
export function antecedentByFormula(curveNumber: number, condition: AntecedentCondition, pair: AntecedentPair): number {
  need('antecedentByFormula', 'curveNumber', curveNumber, { atLeast: 0, atMost: 100 });
  if (condition === 'average') return curveNumber;
  if (pair === 'hawkins-1985') {
    return condition === 'dry' ? curveNumber / (2.281 - 0.01281 * curveNumber) : curveNumber / (0.427 + 0.00573 * curveNumber);
  }
  return condition === 'dry' ? (4.2 * curveNumber) / (10 - 0.058 * curveNumber) : (23 * curveNumber) / (10 + 0.13 * curveNumber);
}
