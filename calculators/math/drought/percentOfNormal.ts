import { need } from '../need.ts';

/**
 * Rain as a percentage of normal: 100 P / N, with P = `rainIn`, N = `normalIn`. Say which normal: the mean of a skewed record lies above its
 * median, so half of all years fall short of it by more than it seems.
 * @param rainIn - Rain of the period, inches; at least 0
 * @param normalIn - Mean or median of the same period over the record, inches; above 0
 * @returns Percent of normal
 * @throws RangeError if a parameter is outside its range
 * @source common practice
 * @example percentOfNormal(3, 4) //=> 75
 */
export function percentOfNormal(rainIn: number, normalIn: number): number {
  need('percentOfNormal', 'rainIn', rainIn, { atLeast: 0 });
  need('percentOfNormal', 'normalIn', normalIn, { above: 0 });
  return (100 * rainIn) / normalIn;
}
