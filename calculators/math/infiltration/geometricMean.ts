import { need } from '../need.ts';

/**
 * Middle of rates that scatter by factors: exp(Σ ln r / n), with r the `values`. One wild ring does not carry it away as it does an average.
 * @param values - Rates or other numbers above 0, in any one unit; at least one
 * @returns Geometric mean, in the unit of the values
 * @throws RangeError if there is no value or one is not above 0
 * @source our own, definition
 * @example geometricMean([0.5, 2, 8]) //=> 2.00
 */
export function geometricMean(values: readonly number[]): number {
  need('geometricMean', 'the number of values', values.length, { atLeast: 1 });
  for (const value of values) need('geometricMean', 'values', value, { above: 0 });
  return Math.exp(values.reduce((sum, value) => sum + Math.log(value), 0) / values.length);
}
