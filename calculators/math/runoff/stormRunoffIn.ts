import type { AbstractionRatio } from './initialAbstractionIn.ts';
import { retentionAt05In } from './retentionAt05In.ts';
import { retentionIn } from './retentionIn.ts';
import { runoffIn } from './runoffIn.ts';

/**
 * Retention that a tabled curve number stands for under either convention: S = 1000 / CN − 10, and for the ratio 0.05 its converted value.
 * @param curveNumber - Curve number as tabled, no unit; above 0, at most 100
 * @param abstractionRatio - Share of the retention used up first, no unit; 0.2 or 0.05
 * @returns Potential retention that belongs to the ratio, inches
 * @throws RangeError if `curveNumber` is outside its range
 * @source hawkins-2002, conversion of S at 0.20 to S at 0.05
 * @example ratioRetentionIn(70, 0.05) //=> 7.091
 */
export function ratioRetentionIn(curveNumber: number, abstractionRatio: AbstractionRatio): number {
  const tabledIn = retentionIn(curveNumber);
  return abstractionRatio === 0.05 ? retentionAt05In(tabledIn) : tabledIn;
}

/**
 * Depth that runs off in one storm from ground with a tabled curve number CN = `curveNumber`: Q = (P − Ia)² / (P − Ia + S), with P = `rainIn`
 * and S of CN converted to the `abstractionRatio`, so that a tabled number is never used with the other convention's S.
 * @param options.rainIn - Rain of the storm, inches; 0 or more
 * @param options.curveNumber - Curve number as tabled (they all stand on the ratio 0.2), no unit; above 0, at most 100
 * @param options.abstractionRatio - Share of the retention used up first, no unit; 0.2 or 0.05
 * @returns Runoff over the whole area, inches
 * @throws RangeError if `rainIn` is negative or `curveNumber` is outside its range
 * @source tr55-1986, eq. 2-1 and 2-4
 * @example stormRunoffIn({ rainIn: 3, curveNumber: 70, abstractionRatio: 0.2 }) //=> 0.71
 */
export function stormRunoffIn({
  rainIn,
  curveNumber,
  abstractionRatio,
}: {
  rainIn: number;
  curveNumber: number;
  abstractionRatio: AbstractionRatio;
}): number {
  return runoffIn({ rainIn, retentionIn: ratioRetentionIn(curveNumber, abstractionRatio), abstractionRatio });
}
