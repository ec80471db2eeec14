import { need, needThere } from '../need.ts';

/**
 * Value that a share p of years stays below, by the Weibull rule (type 6 of Hyndman and Fan): the value at place p (n + 1) of the sorted record, on
 * the line between neighbours, with p = `share`, n the length of `values`. The rule of hydrology's return periods: the driest of n years is the one
 * in n + 1. Beyond the ends it stays at the driest or wettest year.
 * @param values - The record, any one unit; one or more finite numbers, in any order
 * @param share - Share of years below; 0 to 1
 * @returns Quantile, unit of the values
 * @throws RangeError if the record is empty or a value is not finite, or `share` is outside its range
 * @source hyndman-fan-1996, definition 6
 * @example quantileType6([10, 20, 30, 40], 0.5) //=> 25
 */
export function quantileType6(values: readonly number[], share: number): number {
  need('quantileType6', 'values.length', values.length, { atLeast: 1 });
  for (const value of values) need('quantileType6', 'values', value);
  need('quantileType6', 'share', share, { atLeast: 0, atMost: 1 });
  const sorted = values.toSorted((first, second) => first - second);
  const place = Math.min(sorted.length, Math.max(1, share * (sorted.length + 1)));
  const below = Math.floor(place);
  const lower = needThere('quantileType6', 'year below', sorted[below - 1]);
  const upper = needThere('quantileType6', 'year above', sorted[Math.min(below, sorted.length - 1)]);
  return lower + (place - below) * (upper - lower);
}
