import { need } from '../need.ts';

/**
 * What has grown back when a paddock is grazed again, never more than was there: G = min(g R, F), with g = `growthLbPerAcDay`, R = `restDays`, F = `fullLbPerAc`.
 * @param options.growthLbPerAcDay - Growth of a resting paddock, lb of dry matter per acre and day; at least 0
 * @param options.restDays - Days that the paddock rests, days; at least 0
 * @param options.fullLbPerAc - What stands above the stubble when grazing is meant to start, lb per acre; at least 0
 * @returns Dry matter above the stubble, lb per acre
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example regrownLbPerAc({ growthLbPerAcDay: 15, restDays: 32, fullLbPerAc: 1000 }) //=> 480
 */
export function regrownLbPerAc({
  growthLbPerAcDay,
  restDays,
  fullLbPerAc,
}: {
  readonly growthLbPerAcDay: number;
  readonly restDays: number;
  readonly fullLbPerAc: number;
}): number {
  need('regrownLbPerAc', 'growthLbPerAcDay', growthLbPerAcDay, { atLeast: 0 });
  need('regrownLbPerAc', 'restDays', restDays, { atLeast: 0 });
  need('regrownLbPerAc', 'fullLbPerAc', fullLbPerAc, { atLeast: 0 });
  return Math.min(growthLbPerAcDay * restDays, fullLbPerAc);
}
