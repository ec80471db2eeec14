import { need } from '../need.ts';

/**
 * How hard a day's rain beats on the ground, up to a factor of the place and season: P^1.81, with P = `rainMm`. It shares out a year's erosivity over its
 * days; the size of the year comes from its own R.
 * @param rainMm - Rain of the day, millimeters; at least 0
 * @returns Erosivity of the day, no unit of its own
 * @throws RangeError if `rainMm` is negative
 * @source richardson-foster-wright-1983, power law of daily rain (abstract read; the exponent from memory)
 * @example rainErosivity(10) //=> 64.565
 */
export function rainErosivity(rainMm: number): number {
  need('rainErosivity', 'rainMm', rainMm, { atLeast: 0 });
  return rainMm ** 1.81;
}
