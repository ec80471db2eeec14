import { need } from '../need.ts';

/** A value with the range that holds the true one at some confidence. */
export interface WithRange {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Later value less earlier value with its range, from a range of each that shares no chance with the other: from d − √((p2 − l2)² + (u1 − p1)²) to
 * d + √((u2 − p2)² + (p1 − l1)²), with d = p2 − p1, and l, u the ends of each range. It holds the true gap as often as the two ranges hold their values.
 * @param options.earlier - Value p1 with the ends l1 and u1 of its range, in any one unit; the value lies between them
 * @param options.later - The same of p2, in the same unit, at the same confidence
 * @returns Gap and the ends of its range, in that unit
 * @throws RangeError if the low end of a range lies above its high end, or a value is not finite
 * @source newcombe-1998-difference, method 10
 * @example gapRange({ earlier: { value: 10, low: 7, high: 14 }, later: { value: 30, low: 27, high: 33 } }) //=> { change: 20, low: 15, high: 24.242640687119284 }
 */
export function gapRange({ earlier, later }: { readonly earlier: WithRange; readonly later: WithRange }): {
  readonly change: number;
  readonly low: number;
  readonly high: number;
} {
  for (const [when, { value, low, high }] of [
    ['earlier', earlier],
    ['later', later],
  ] as const) {
    need('gapRange', `the ${when} value`, value);
    need('gapRange', `the ${when} low end`, low, { atMost: high });
    need('gapRange', `the ${when} high end`, high);
  }
  const change = later.value - earlier.value;
  return {
    change,
    low: change - Math.hypot(later.value - later.low, earlier.high - earlier.value),
    high: change + Math.hypot(later.high - later.value, earlier.value - earlier.low),
  };
}
