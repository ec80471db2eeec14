import { need } from '../need.ts';

/**
 * Share of the available water that plants take before they slow down, fitted to the day's thirst: p = pTab + 0.04 (5 − ETc), kept within 0.1 to 0.8,
 * with pTab = `tableFraction`, ETc = `cropUseMm`. On a hot day plants feel the want of water sooner.
 * @param tableFraction - Fraction of the table, which stands for 5 mm a day; 0.1 to 0.8
 * @param cropUseMm - Water that the plants would use if well supplied (not the reference), millimeters per day; at least 0
 * @returns Depletion fraction, 0.1 to 0.8
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, chapter 8 and table 22
 * @example depletionFraction(0.6, 7) //=> 0.52
 */
export function depletionFraction(tableFraction: number, cropUseMm: number): number {
  need('depletionFraction', 'tableFraction', tableFraction, { atLeast: 0.1, atMost: 0.8 });
  need('depletionFraction', 'cropUseMm', cropUseMm, { atLeast: 0 });
  return Math.min(0.8, Math.max(0.1, tableFraction + 0.04 * (5 - cropUseMm)));
}
