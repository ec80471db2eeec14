import { need } from '../need.ts';

/**
 * Potential retention that goes with an initial abstraction of 0.05 S: S05 = 1.33 S^1.15, with S = `retentionIn` of the 0.2 S convention.
 * The power law holds for inches only.
 * @param retentionIn - Potential retention as tabled curve numbers give it (initial abstraction 0.2 S), inches; 0 or more
 * @returns Potential retention for an initial abstraction of 0.05 S, inches
 * @throws RangeError if `retentionIn` is negative
 * @source hawkins-2002, conversion of S at 0.20 to S at 0.05
 * @example retentionAt05In(2.5) //=> 3.815
 */
export function retentionAt05In(retentionIn: number): number {
  need('retentionAt05In', 'retentionIn', retentionIn, { atLeast: 0 });
  return 1.33 * retentionIn ** 1.15;
}
