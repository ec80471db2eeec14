import { need } from '../need.ts';

/**
 * Share of the bite that is green: stock take green before dead, p G / (p G + D), with G = `greenLbPerAc`, D = `deadLbPerAc`, p = `preference`.
 * @param greenLbPerAc - Green mass, pounds of dry matter per acre; at least 0
 * @param deadLbPerAc - Standing dead mass, pounds of dry matter per acre; at least 0
 * @param preference - How many times sooner stock take a pound of green than a pound of dead, no unit; above 0
 * @returns Share of the bite, 0 to 1; 0 where nothing stands
 * @throws RangeError if a parameter is outside its range
 * @source our own
 * @example greenShareOfBite(500, 500, 3) //=> 0.75
 */
export function greenShareOfBite(greenLbPerAc: number, deadLbPerAc: number, preference: number): number {
  need('greenShareOfBite', 'greenLbPerAc', greenLbPerAc, { atLeast: 0 });
  need('greenShareOfBite', 'deadLbPerAc', deadLbPerAc, { atLeast: 0 });
  need('greenShareOfBite', 'preference', preference, { above: 0 });
  const wanted = preference * greenLbPerAc;
  return wanted + deadLbPerAc > 0 ? wanted / (wanted + deadLbPerAc) : 0;
}
