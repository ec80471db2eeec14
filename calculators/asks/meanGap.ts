import type { Between } from '../kit/shown.ts';
import { meanChange } from '../math/special/meanChange.ts';

/** Fewer readings than this on either side and nothing is said of chance. Our own. */
const fewestReadings = 3;
const confidencePercent = 95;

/**
 * How far the gap between two means is to be believed, by how much the readings of each side differ among themselves (`meanChange`).
 * @param here - Readings of this side, in the unit of the result
 * @param there - Readings of that side, in the same unit
 * @param names - What was read, as `cores`
 * @returns The range of that mean less this one in their unit, or why there is none
 */
export function meanGap(here: readonly number[], there: readonly number[], names: string): Exclude<Between, { readonly instead: string }> {
  if (Math.min(here.length, there.length) < fewestReadings) return { unbounded: `too few ${names} to tell it from chance` };
  const { low, high } = meanChange({ earlier: here, later: there, confidencePercent });
  // Readings that agree to the last digit would bound it to nothing.
  return low === high ? { unbounded: `no range: the ${names} of each side were all alike` } : { low, high };
}
