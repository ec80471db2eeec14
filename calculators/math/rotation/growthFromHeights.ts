import { need } from '../need.ts';

/**
 * Growth of a resting stand from its height on two days: g = (H2 - H1) d / t, with H1 = `firstHeightIn`, H2 = `secondHeightIn`, d =
 * `poundsPerAcreInch`, t = `daysBetween`. Negative where the stand fell back.
 * @param options.firstHeightIn - Height on the first day, inches; at least 0
 * @param options.secondHeightIn - Height on the second day, inches; at least 0
 * @param options.daysBetween - Days from the first to the second, days; above 0
 * @param options.poundsPerAcreInch - Dry matter in an inch of height, lb per acre; above 0
 * @returns Growth, lb dry matter per acre and day
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example growthFromHeights({ firstHeightIn: 4, secondHeightIn: 6, daysBetween: 10, poundsPerAcreInch: 250 }) //=> 50
 */
export function growthFromHeights({
  firstHeightIn,
  secondHeightIn,
  daysBetween,
  poundsPerAcreInch,
}: {
  readonly firstHeightIn: number;
  readonly secondHeightIn: number;
  readonly daysBetween: number;
  readonly poundsPerAcreInch: number;
}): number {
  need('growthFromHeights', 'firstHeightIn', firstHeightIn, { atLeast: 0 });
  need('growthFromHeights', 'secondHeightIn', secondHeightIn, { atLeast: 0 });
  need('growthFromHeights', 'daysBetween', daysBetween, { above: 0 });
  need('growthFromHeights', 'poundsPerAcreInch', poundsPerAcreInch, { above: 0 });
  return ((secondHeightIn - firstHeightIn) * poundsPerAcreInch) / daysBetween;
}
