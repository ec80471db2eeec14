import { need } from '../need.ts';

/**
 * Share of a full day's grass that stock get from a short stand: V / F, 1 at most, with V = `standingLbPerAc`, F = `fullFromLbPerAc`. On short grass each
 * bite is small and the day has only so many hours. Range guides put F near 750 lb/ac, guides for humid pasture as high as 1,200.
 * @param standingLbPerAc - What stands, green and dead, pounds of dry matter per acre; at least 0
 * @param fullFromLbPerAc - Standing mass from which stock get all they want, pounds of dry matter per acre; above 0
 * @returns Share of a full day's intake, 0 to 1
 * @throws RangeError if a parameter is outside its range
 * @source white-b5036, intake on short grass; straight from nothing is our own
 * @example intakeShare(600, 750) //=> 0.8
 */
export function intakeShare(standingLbPerAc: number, fullFromLbPerAc: number): number {
  need('intakeShare', 'standingLbPerAc', standingLbPerAc, { atLeast: 0 });
  need('intakeShare', 'fullFromLbPerAc', fullFromLbPerAc, { above: 0 });
  return Math.min(1, standingLbPerAc / fullFromLbPerAc);
}
