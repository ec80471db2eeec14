import { need } from '../need.ts';

/** Degree days at which cool-season grass begins to speed up, and how long before `firstC` it is at its best and leaves it again. */
const startsAtC = 200;
const bestBeforeC = 200;
const leavesBeforeC = 100;

/**
 * Spring flush of cool-season grass: reserves and seed stalks drive growth above its mean in spring, and growth stays below it after. By degree days
 * since midwinter: low up to 200, rising evenly to high at first − 200, high up to first − 100, falling evenly to low at second, with low = `low`, high =
 * `high`, first = `firstC`, second = `secondC`, degree days = `degreeDaysC`. With low and high at 1 it does nothing, as for warm-season grass.
 * @param options.degreeDaysC - Degree days above freezing since midwinter, degrees Celsius times days; at least 0
 * @param options.low - Growth outside the flush, share of the mean; above 0, at most 1
 * @param options.high - Growth in the flush, share of the mean; at least 1
 * @param options.firstC - Degree days by which the flush wanes, less a hundred; above 400
 * @param options.secondC - Degree days at which the flush is over; above `firstC`
 * @returns Growth over the mean, no unit
 * @throws RangeError if a parameter is outside its range
 * @source jouven-2006, seasonal effect on growth
 * @example springFlush({ degreeDaysC: 387.5, low: 0.7, high: 1.3, firstC: 775, secondC: 1450 }) //=> 1
 */
export function springFlush({
  degreeDaysC,
  low,
  high,
  firstC,
  secondC,
}: {
  readonly degreeDaysC: number;
  readonly low: number;
  readonly high: number;
  readonly firstC: number;
  readonly secondC: number;
}): number {
  need('springFlush', 'degreeDaysC', degreeDaysC, { atLeast: 0 });
  need('springFlush', 'low', low, { above: 0, atMost: 1 });
  need('springFlush', 'high', high, { atLeast: 1 });
  need('springFlush', 'firstC', firstC, { above: startsAtC + bestBeforeC });
  need('springFlush', 'secondC', secondC, { above: firstC });
  if (degreeDaysC <= startsAtC || degreeDaysC >= secondC) return low;
  const bestFrom = firstC - bestBeforeC;
  const bestTo = firstC - leavesBeforeC;
  if (degreeDaysC < bestFrom) return low + ((high - low) * (degreeDaysC - startsAtC)) / (bestFrom - startsAtC);
  if (degreeDaysC <= bestTo) return high;
  return high + ((low - high) * (degreeDaysC - bestTo)) / (secondC - bestTo);
}
