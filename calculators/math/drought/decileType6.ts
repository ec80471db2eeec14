import { need } from '../need.ts';
import { quantileType6 } from './quantileType6.ts';

/** The five groups of deciles, driest first. */
export type DecileGroup = 'much-below' | 'below' | 'near' | 'above' | 'much-above';

/**
 * Decile of an amount in a record: 1 if not above the amount that a tenth of years stays below, up to 10, with boundaries by the Weibull rule, for
 * `amount` and `record`. A record under nine years cannot tell its outer tenths apart.
 * @param amount - Rain of the period in question, any one unit; at least 0
 * @param record - Rain of the same period in each year of the record, same unit; nine years or more
 * @returns Decile, 1 (driest tenth) to 10 (wettest tenth)
 * @throws RangeError if the record is shorter than nine years or a value is outside its range
 * @source gibbs-maher-1967; boundaries by hyndman-fan-1996, definition 6
 * @example decileType6(2.9, [1, 2, 3, 4, 5, 6, 7, 8, 9]) //=> 3
 */
export function decileType6(amount: number, record: readonly number[]): number {
  need('decileType6', 'amount', amount, { atLeast: 0 });
  need('decileType6', 'record.length', record.length, { atLeast: 9 });
  const boundaries = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((tenth) => quantileType6(record, tenth / 10));
  return 1 + boundaries.filter((boundary) => amount > boundary).length;
}

/**
 * Group of a decile: two deciles to each, from much below (1 and 2) to much above normal (9 and 10), with `decile`.
 * @param decile - Decile; a whole number, 1 to 10
 * @returns Group of the decile
 * @throws RangeError if `decile` is outside its range
 * @source gibbs-maher-1967
 * @example decileGroup(3) //=> 'below'
 */
export function decileGroup(decile: number): DecileGroup {
  need('decileGroup', 'decile', decile, { atLeast: 1, atMost: 10, whole: true });
  if (decile <= 2) return 'much-below';
  if (decile <= 4) return 'below';
  if (decile <= 6) return 'near';
  return decile <= 8 ? 'above' : 'much-above';
}
