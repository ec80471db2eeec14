import { need } from '../need.ts';

/**
 * Dry matter above the stubble from clipped plots: M - s where it was cut to the ground, M where it was cut at grazing height, with M =
 * `clippedLbPerAc`, s = `stubbleLbPerAc`. The stubble is taken off once; only trampling and refusal may come off after this.
 * @param options.clippedLbPerAc - Dry matter clipped, lb per acre; at least 0
 * @param options.clippedTo - Where the cut was made: ground or stubble
 * @param options.stubbleLbPerAc - Dry matter to leave standing, lb per acre; at least 0; not used where the cut was at stubble height
 * @returns Dry matter above the stubble, lb per acre; 0 where the stand is below it
 * @throws RangeError if a value is outside its range
 * @source umaine-pasture-lesson-1, appendix E
 * @example availableLbPerAc({ clippedLbPerAc: 2505, clippedTo: 'ground', stubbleLbPerAc: 900 }) //=> 1605
 */
export function availableLbPerAc({
  clippedLbPerAc,
  clippedTo,
  stubbleLbPerAc,
}: {
  readonly clippedLbPerAc: number;
  readonly clippedTo: 'ground' | 'stubble';
  readonly stubbleLbPerAc: number;
}): number {
  need('availableLbPerAc', 'clippedLbPerAc', clippedLbPerAc, { atLeast: 0 });
  need('availableLbPerAc', 'stubbleLbPerAc', stubbleLbPerAc, { atLeast: 0 });
  return clippedTo === 'stubble' ? clippedLbPerAc : Math.max(0, clippedLbPerAc - stubbleLbPerAc);
}
