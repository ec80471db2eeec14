import { need } from '../need.ts';
import { type LinearFit, linearFit } from './linearFit.ts';

/** Fewer pairs than this draw a line that the next clip may overturn. */
export const fewestPairs = 10;

/**
 * Line from plate-meter height to dry matter, fitted to the place's own clips: M = a + b h. Printed equations come from foreign ryegrass and are
 * not used.
 * @param pairs - For each clip the plate reading, any unit, at least 0; and the dry matter under the plate, lb per acre, at least 0; 10 clips or
 * more
 * @returns Slope, intercept, r squared, residual deviation and standard errors of the line
 * @throws RangeError if there are fewer than 10 clips, a value is outside its range, or all readings are equal
 * @source dillard-2016, calibration by linear regression
 * @example plateMeterCalibration(Array.from({ length: 10 }, (_, i) => ({ reading: i, lbPerAc: 500 + 150 * i }))).slope //=> 150
 */
export function plateMeterCalibration(pairs: readonly { readonly reading: number; readonly lbPerAc: number }[]): LinearFit {
  need('plateMeterCalibration', 'pairs.length', pairs.length, { atLeast: fewestPairs });
  for (const { reading, lbPerAc } of pairs) {
    need('plateMeterCalibration', 'reading', reading, { atLeast: 0 });
    need('plateMeterCalibration', 'lbPerAc', lbPerAc, { atLeast: 0 });
  }
  return linearFit(pairs.map(({ reading, lbPerAc }) => [reading, lbPerAc] as const));
}
