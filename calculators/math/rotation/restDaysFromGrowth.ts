import { need } from '../need.ts';

/**
 * Days that a paddock needs to grow from the stubble left to the height to graze: R = (H1 - H0) d / g, with H1 = `startHeightIn`, H0 =
 * `stopHeightIn`, d = `poundsPerAcreInch`, g = `growthLbPerAcDay`. Growth of zero has no answer here; the caller says so.
 * @param options.startHeightIn - Height at which grazing starts, inches; above `stopHeightIn`
 * @param options.stopHeightIn - Height at which grazing stopped, inches; at least 0
 * @param options.poundsPerAcreInch - Dry matter in an inch of height, lb per acre; above 0
 * @param options.growthLbPerAcDay - Growth, lb dry matter per acre and day; above 0
 * @returns Rest, days
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example restDaysFromGrowth({ startHeightIn: 8, stopHeightIn: 4, poundsPerAcreInch: 250, growthLbPerAcDay: 40 }) //=> 25
 */
export function restDaysFromGrowth({
  startHeightIn,
  stopHeightIn,
  poundsPerAcreInch,
  growthLbPerAcDay,
}: {
  readonly startHeightIn: number;
  readonly stopHeightIn: number;
  readonly poundsPerAcreInch: number;
  readonly growthLbPerAcDay: number;
}): number {
  need('restDaysFromGrowth', 'stopHeightIn', stopHeightIn, { atLeast: 0 });
  need('restDaysFromGrowth', 'startHeightIn', startHeightIn, { above: stopHeightIn });
  need('restDaysFromGrowth', 'poundsPerAcreInch', poundsPerAcreInch, { above: 0 });
  need('restDaysFromGrowth', 'growthLbPerAcDay', growthLbPerAcDay, { above: 0 });
  return ((startHeightIn - stopHeightIn) * poundsPerAcreInch) / growthLbPerAcDay;
}
