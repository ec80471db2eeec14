import { need } from '../need.ts';

/**
 * Dry matter in an inch of height from clips beside a measuring stick: the sum of the clipped masses over the sum of the heights that were cut.
 * Clip at grazing height where you can: the bottom inches of a sward are heavier than the top.
 * @param clips - For each clip the height cut off, inches, above 0; and the dry matter in it, lb per acre, at least 0; three clips or more
 * @returns Dry matter, lb per acre-inch
 * @throws RangeError if there are fewer than three clips or a value is outside its range
 * @source common practice
 * @example stickDensity([{ heightCutIn: 4, lbPerAc: 1000 }, { heightCutIn: 5, lbPerAc: 1100 }, { heightCutIn: 3, lbPerAc: 900 }]) //=> 250
 */
export function stickDensity(clips: readonly { readonly heightCutIn: number; readonly lbPerAc: number }[]): number {
  need('stickDensity', 'clips.length', clips.length, { atLeast: 3 });
  let heightIn = 0;
  let massLbPerAc = 0;
  for (const clip of clips) {
    need('stickDensity', 'heightCutIn', clip.heightCutIn, { above: 0 });
    need('stickDensity', 'lbPerAc', clip.lbPerAc, { atLeast: 0 });
    heightIn += clip.heightCutIn;
    massLbPerAc += clip.lbPerAc;
  }
  return massLbPerAc / heightIn;
}
