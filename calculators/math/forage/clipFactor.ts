import { need } from '../need.ts';
import { poundsPerKilogram, squareFeetPerAcre } from '../water/waterVolume.ts';

/**
 * Pounds per acre for each gram clipped: k = 43,560 / (453.59237 a n), with a = `frameAreaFt2`, n = `plots`. Give the grams of all plots together.
 * @param options.frameAreaFt2 - Area of one frame, square feet; above 0
 * @param options.plots - Plots whose clippings were weighed together, whole; at least 1
 * @returns Factor, lb per acre for a gram
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example clipFactor({ frameAreaFt2: 9.6, plots: 1 }) //=> 10.00
 */
export function clipFactor({ frameAreaFt2, plots }: { readonly frameAreaFt2: number; readonly plots: number }): number {
  need('clipFactor', 'frameAreaFt2', frameAreaFt2, { above: 0 });
  need('clipFactor', 'plots', plots, { atLeast: 1, whole: true });
  return ((poundsPerKilogram / 1000) * squareFeetPerAcre) / (frameAreaFt2 * plots);
}
