import { need } from '../need.ts';
import { clipFactor } from './clipFactor.ts';

/**
 * Dry matter that was clipped: M = k g d / 100, with k the clip factor of `frameAreaFt2` and `plots`, g = `greenGrams`, d = `dryMatterPercent`.
 * What it means for grazing depends on where it was cut: see `availableLbPerAc`.
 * @param options.greenGrams - Weight of the clippings of all plots together, grams; at least 0
 * @param options.plots - Plots clipped, whole; at least 1
 * @param options.frameAreaFt2 - Area of one frame, square feet; above 0
 * @param options.dryMatterPercent - Dry matter in the clippings as weighed, percent; above 0, at most 100
 * @returns Dry matter clipped, lb per acre
 * @throws RangeError if a value is outside its range
 * @source umaine-pasture-lesson-1, appendix E
 * @example clippedLbPerAc({ greenGrams: 400, plots: 10, frameAreaFt2: 4.8, dryMatterPercent: 50 }) //=> 400
 */
export function clippedLbPerAc({
  greenGrams,
  plots,
  frameAreaFt2,
  dryMatterPercent,
}: {
  readonly greenGrams: number;
  readonly plots: number;
  readonly frameAreaFt2: number;
  readonly dryMatterPercent: number;
}): number {
  need('clippedLbPerAc', 'greenGrams', greenGrams, { atLeast: 0 });
  need('clippedLbPerAc', 'dryMatterPercent', dryMatterPercent, { above: 0, atMost: 100 });
  return (clipFactor({ frameAreaFt2, plots }) * greenGrams * dryMatterPercent) / 100;
}
