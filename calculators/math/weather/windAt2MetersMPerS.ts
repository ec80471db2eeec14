import { need } from '../need.ts';

/**
 * Wind at 2 m from wind measured higher or lower over short grass: u2 = uz · 4.87 / ln(67.8 z − 5.42), with uz = `windMPerS`, z = `heightM`.
 * @param windMPerS - Wind at the instrument, meters per second; at least 0
 * @param heightM - Height of the instrument above ground, meters; 0.5 to 100
 * @returns Wind at 2 m, meters per second
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 47
 * @example windAt2MetersMPerS(3.2, 10) //=> 2.4
 */
export function windAt2MetersMPerS(windMPerS: number, heightM: number): number {
  need('windAt2MetersMPerS', 'windMPerS', windMPerS, { atLeast: 0 });
  need('windAt2MetersMPerS', 'heightM', heightM, { atLeast: 0.5, atMost: 100 });
  return (windMPerS * 4.87) / Math.log(67.8 * heightM - 5.42);
}
