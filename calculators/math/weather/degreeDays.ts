import { need } from '../need.ts';

/**
 * Degree days of one day by the mean: max(0, (Tmax + Tmin) / 2 − Tb), with Tmin = `minDegrees`, Tmax = `maxDegrees`, Tb = `baseDegrees`, all on one
 * scale.
 * @param options.minDegrees - Lowest temperature of the day, degrees of either scale; at most `maxDegrees`
 * @param options.maxDegrees - Highest temperature of the day, degrees of the same scale
 * @param options.baseDegrees - Temperature below which nothing grows, degrees of the same scale
 * @returns Degree days of that scale; a Celsius one is 1.8 Fahrenheit ones
 * @throws RangeError if `minDegrees` is above `maxDegrees`
 * @source mcmaster-1997, method 1
 * @example degreeDays({ minDegrees: 61, maxDegrees: 83, baseDegrees: 50 }) //=> 22
 */
export function degreeDays({
  minDegrees,
  maxDegrees,
  baseDegrees,
}: {
  readonly minDegrees: number;
  readonly maxDegrees: number;
  readonly baseDegrees: number;
}): number {
  need('degreeDays', 'maxDegrees', maxDegrees);
  need('degreeDays', 'minDegrees', minDegrees, { atMost: maxDegrees });
  need('degreeDays', 'baseDegrees', baseDegrees);
  return Math.max(0, (maxDegrees + minDegrees) / 2 - baseDegrees);
}

/**
 * Degree days of one day with each temperature first drawn into the range where the crop grows (base to upper): (Tmax + Tmin) / 2 − Tb,
 * with Tmin = `minDegrees`, Tmax = `maxDegrees`, Tb = `baseDegrees`, upper limit `upperDegrees`. Corn is counted so, 50 to 86 °F.
 * A day with a cold night counts for more here than by the mean: never mix the two.
 * @param options.minDegrees - Lowest temperature of the day, degrees of either scale; at most `maxDegrees`
 * @param options.maxDegrees - Highest temperature of the day, degrees of the same scale
 * @param options.baseDegrees - Temperature below which nothing grows, degrees of the same scale
 * @param options.upperDegrees - Temperature above which it grows no faster, degrees of the same scale; above `baseDegrees`
 * @returns Degree days of that scale; a Celsius one is 1.8 Fahrenheit ones
 * @throws RangeError if a parameter is outside its range
 * @source mcmaster-1997, method 2
 * @example clippedDegreeDays({ minDegrees: 45, maxDegrees: 70, baseDegrees: 50, upperDegrees: 86 }) //=> 10
 */
export function clippedDegreeDays({
  minDegrees,
  maxDegrees,
  baseDegrees,
  upperDegrees,
}: {
  readonly minDegrees: number;
  readonly maxDegrees: number;
  readonly baseDegrees: number;
  readonly upperDegrees: number;
}): number {
  need('clippedDegreeDays', 'upperDegrees', upperDegrees, { above: baseDegrees });
  const drawnIn = (degrees: number): number => Math.min(upperDegrees, Math.max(baseDegrees, degrees));
  need('clippedDegreeDays', 'maxDegrees', maxDegrees);
  need('clippedDegreeDays', 'minDegrees', minDegrees, { atMost: maxDegrees });
  return degreeDays({ minDegrees: drawnIn(minDegrees), maxDegrees: drawnIn(maxDegrees), baseDegrees });
}
