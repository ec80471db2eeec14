import { need } from '../need.ts';

/**
 * Sampling error of a standardized index: s = √((1 + z² / 2) / n), the standard error of a normal quantile, with z = `index`, n = `years`.
 * Two times that either way holds about 95 % of such records. It leaves out the doubt about the distribution itself.
 * @param index - Standardized index, no unit; -5 to 5
 * @param years - Years in the record; a whole number, at least 2
 * @returns Standard error of the index, no unit
 * @throws RangeError if a parameter is outside its range
 * @source kite-1977, standard error of a normal quantile (from memory)
 * @example indexStandardError(-1.5, 30) //=> 0.27
 */
export function indexStandardError(index: number, years: number): number {
  need('indexStandardError', 'index', index, { atLeast: -5, atMost: 5 });
  need('indexStandardError', 'years', years, { atLeast: 2, whole: true });
  return Math.sqrt((1 + index ** 2 / 2) / years);
}
