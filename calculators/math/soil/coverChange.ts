import { need } from '../need.ts';
import { gapRange, type WithRange } from '../special/gapRange.ts';
import { inverseNormal } from '../special/inverseNormal.ts';

/** Later share less earlier share, with the range that holds the true change at the stated confidence. */
export interface ShareChange {
  readonly change: number;
  readonly low: number;
  readonly high: number;
}
interface Count {
  /** Points that were covered, or whatever was counted. */
  readonly hits: number;
  /** Points that were looked at. */
  readonly points: number;
}

/** Wilson's score interval for one share. */
function scoreInterval({ hits, points }: Count, z: number): WithRange {
  const middle = 2 * hits + z ** 2;
  const spread = z * Math.sqrt(z ** 2 + 4 * hits * (1 - hits / points));
  const under = 2 * (points + z ** 2);
  return { value: hits / points, low: (middle - spread) / under, high: (middle + spread) / under };
}

/**
 * Change of a counted share from one visit to the next, with Newcombe's hybrid score interval: the range of the gap (`gapRange`)
 * from Wilson's score interval of each share. It stays within −1 and 1.
 * @param options.earlier - Hits and points of the first visit, whole numbers; at least one point, hits 0 to points
 * @param options.later - The same of the second visit
 * @param options.confidencePercent - How often such a range should hold the truth, percent; above 0, below 100
 * @returns Change and the ends of its range, shares of 1
 * @throws RangeError if a parameter is outside its range
 * @source newcombe-1998-difference, method 10
 * @example coverChange({ earlier: { hits: 48, points: 80 }, later: { hits: 56, points: 70 }, confidencePercent: 95 }).low //=> 0.0524
 */
export function coverChange({
  earlier,
  later,
  confidencePercent,
}: {
  readonly earlier: Count;
  readonly later: Count;
  readonly confidencePercent: number;
}): ShareChange {
  for (const [when, { hits, points }] of [
    ['earlier', earlier],
    ['later', later],
  ] as const) {
    need('coverChange', `${when} points`, points, { atLeast: 1, atMost: 1e6, whole: true });
    need('coverChange', `${when} hits`, hits, { atLeast: 0, atMost: points, whole: true });
  }
  need('coverChange', 'confidencePercent', confidencePercent, { above: 0, below: 100 });
  const z = inverseNormal(0.5 + confidencePercent / 200);
  return gapRange({ earlier: scoreInterval(earlier, z), later: scoreInterval(later, z) });
}
