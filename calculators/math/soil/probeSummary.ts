import { median } from 'd3-array';
import { need } from '../need.ts';

/** How packed the ground is, by the share of holes in which the gauge passed 300 psi. */
export type PackedDegree = 'little' | 'slight' | 'moderate' | 'severe';

/**
 * Sums up pushes of a penetrometer: share of the holes that met 300 psi within reach, the middle depth at which those did, and the degree of packing
 * (under 30 % little, to 50 slight, to 75 moderate, beyond severe).
 * @param stopDepthsIn - Depth at which each hole passed 300 psi, inches; 0 or more, Infinity where it never did within reach; at least one hole
 * @returns Holes stopped, percent; median depth of those, inches (undefined if none was); degree of packing
 * @throws RangeError if there is no hole or a depth is negative
 * @source duiker-2002, share of holes (from memory); our own, median of the stopped holes
 * @example probeSummary([5, 7, Infinity, 6]) //=> { stoppedPercent: 75, medianStopIn: 6, degree: 'moderate' }
 */
export function probeSummary(stopDepthsIn: readonly number[]): {
  readonly stoppedPercent: number;
  readonly medianStopIn: number | undefined;
  readonly degree: PackedDegree;
} {
  need('probeSummary', 'holes', stopDepthsIn.length, { atLeast: 1 });
  const stopped = stopDepthsIn.filter((depthIn) => depthIn !== Infinity);
  for (const depthIn of stopped) need('probeSummary', 'stopDepthsIn', depthIn, { atLeast: 0 });
  const stoppedPercent = (100 * stopped.length) / stopDepthsIn.length;
  const degree = stoppedPercent < 30 ? 'little' : stoppedPercent <= 50 ? 'slight' : stoppedPercent <= 75 ? 'moderate' : 'severe';
  return { stoppedPercent, medianStopIn: median(stopped), degree };
}
