import { need } from '../need.ts';

/**
 * Sums over the last k months: one sum for each month that has k − 1 months before it in the record, with k = `months`.
 * @param monthly - Rain of each month in order, none missing, any one unit
 * @param months - Months a sum; a whole number, 1 to the length of the record
 * @returns Sums, unit of the rain; the first belongs to month `months` of the record
 * @throws RangeError if `months` is outside its range or a value is not finite
 * @source edwards-mckee-1997, time scales
 * @example runningSums([1, 2, 3, 4], 3) //=> [6, 9]
 */
export function runningSums(monthly: readonly number[], months: number): number[] {
  need('runningSums', 'months', months, { atLeast: 1, atMost: monthly.length, whole: true });
  for (const each of monthly) need('runningSums', 'monthly', each);
  return monthly.slice(months - 1).map((_, index) => monthly.slice(index, index + months).reduce((sum, each) => sum + each, 0));
}
