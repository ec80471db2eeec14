import { need } from '../need.ts';

/**
 * Potential retention that follows the soil's water day by day: S = S(III) + (S(I) − S(III)) d, with S(III) = `wetRetentionIn` when the topsoil is full,
 * S(I) = `dryRetentionIn` when it is empty, d = `depletedShare` of its top foot. No steps, so that a storm split over two days gives no cliff. Not calibrated.
 * @param options.wetRetentionIn - Retention for wet ground (condition III), inches; at least 0
 * @param options.dryRetentionIn - Retention for dry ground (condition I), inches; at least `wetRetentionIn`
 * @param options.depletedShare - Share of the top 12 in of available water that is gone; 0 to 1
 * @returns Potential retention, inches
 * @throws RangeError if a parameter is outside its range
 * @source our own, so that runoff follows the daily soil water without steps
 * @example retentionByDepletionIn({ wetRetentionIn: 1.765, dryRetentionIn: 9.608, depletedShare: 0.31 }) //=> 4.196
 */
export function retentionByDepletionIn({
  wetRetentionIn,
  dryRetentionIn,
  depletedShare,
}: {
  readonly wetRetentionIn: number;
  readonly dryRetentionIn: number;
  readonly depletedShare: number;
}): number {
  need('retentionByDepletionIn', 'wetRetentionIn', wetRetentionIn, { atLeast: 0 });
  need('retentionByDepletionIn', 'dryRetentionIn', dryRetentionIn, { atLeast: wetRetentionIn });
  need('retentionByDepletionIn', 'depletedShare', depletedShare, { atLeast: 0, atMost: 1 });
  return wetRetentionIn + (dryRetentionIn - wetRetentionIn) * depletedShare;
}
