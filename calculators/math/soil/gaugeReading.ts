import { need } from '../need.ts';

/** `loose`: poor contact between seed and soil; `easy`: roots go freely; `slowing`: roots are held back; `stopping`: roots stay out. */
export type GaugeReading = 'loose' | 'easy' | 'slowing' | 'stopping';

/** Gauge pressure above which roots stay out, psi. */
export const stoppingPsi = 300;

/**
 * What a penetrometer's gauge says of roots: below 100 psi loose, to 200 easy, to 300 slowing, beyond that stopping. Holds only in soil as wet as a day or
 * two after a soaking rain: dry soil reads high and means nothing. Roots grow on when it gets wet again.
 * @param psi - Reading of a 30-degree cone pushed at an inch a second, pounds a square inch; 0 or more
 * @returns Reading in words
 * @throws RangeError if `psi` is negative
 * @source duiker-2002, reading the gauge
 * @example gaugeReading(250) //=> 'slowing'
 */
export function gaugeReading(psi: number): GaugeReading {
  need('gaugeReading', 'psi', psi, { atLeast: 0 });
  if (psi < 100) return 'loose';
  if (psi <= 200) return 'easy';
  return psi <= stoppingPsi ? 'slowing' : 'stopping';
}
