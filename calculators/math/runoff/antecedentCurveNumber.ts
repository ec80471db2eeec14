import { antecedentTable } from '../../tables/antecedent.ts';
import { need, needThere } from '../need.ts';

/** How wet the ground was before the storm: antecedent runoff condition I, II, III. */
export type AntecedentCondition = 'dry' | 'average' | 'wet';

/**
 * Curve number for ground that was dry, average or wet before the storm, by the handbook's table, interpolated linearly between its rows.
 * @param curveNumber - Curve number for average ground, no unit; 0 to 100
 * @param condition - Antecedent condition; `dry` (I), `average` (II) or `wet` (III)
 * @returns Curve number for that condition, no unit
 * @throws RangeError if `curveNumber` is outside 0 to 100
 * @source nrcs-neh630-10-2004, table 10-1
 * @example antecedentCurveNumber(70, 'dry') //=> 51
 */
export function antecedentCurveNumber(curveNumber: number, condition: AntecedentCondition): number {
  need('antecedentCurveNumber', 'curveNumber', curveNumber, { atLeast: 0, atMost: 100 });
  if (condition === 'average') return curveNumber;
  const { rows } = antecedentTable;
  // Rows run from 100 down to 0, so the first row at or below the number is the lower neighbour.
  const below = rows.findIndex(([average]) => average <= curveNumber);
  const [lowerAverage, lowerDry, lowerWet] = needThere('antecedentCurveNumber', `row below ${curveNumber}`, rows[below]);
  const [upperAverage, upperDry, upperWet] = rows[below - 1] ?? [lowerAverage, lowerDry, lowerWet];
  const [lower, upper] = condition === 'dry' ? [lowerDry, upperDry] : [lowerWet, upperWet];
  const spanned = upperAverage - lowerAverage;
  return spanned === 0 ? lower : lower + ((upper - lower) * (curveNumber - lowerAverage)) / spanned;
}
