import { need } from '../need.ts';
import { antecedentCurveNumber } from './antecedentCurveNumber.ts';
import type { AbstractionRatio } from './initialAbstractionIn.ts';
import { retentionAt05In } from './retentionAt05In.ts';
import { retentionIn } from './retentionIn.ts';

/**
 * Potential retention of ground on a given day: S = S3 + d (S1 − S3), with d = `depletedShare`, S1 and S3 the retentions of the dry and the wet
 * curve number that go with `curveNumber`; for the ratio 0.05 the result is converted. Average ground comes out at about a third depleted.
 * @param options.curveNumber - Curve number for average ground, no unit; above 0, at most 100
 * @param options.depletedShare - Share of the plant-available water of the top foot that is used up, no unit; 0 (full) to 1 (dry)
 * @param options.abstractionRatio - Share of the retention used up first, no unit; 0.2 or 0.05
 * @returns Potential retention that belongs to the ratio, inches
 * @throws RangeError if a parameter is outside its range
 * @source our own, since the handbook gives three conditions and no day between them
 * @example retentionByDepletionIn({ curveNumber: 74, depletedShare: 1, abstractionRatio: 0.2 }) //=> 8.18
 */
export function retentionByDepletionIn({
  curveNumber,
  depletedShare,
  abstractionRatio,
}: {
  curveNumber: number;
  depletedShare: number;
  abstractionRatio: AbstractionRatio;
}): number {
  need('retentionByDepletionIn', 'curveNumber', curveNumber, { above: 0, atMost: 100 });
  need('retentionByDepletionIn', 'depletedShare', depletedShare, { atLeast: 0, atMost: 1 });
  const dryIn = retentionIn(antecedentCurveNumber(curveNumber, 'dry'));
  const wetIn = retentionIn(antecedentCurveNumber(curveNumber, 'wet'));
  const tabledIn = wetIn + depletedShare * (dryIn - wetIn);
  return abstractionRatio === 0.05 ? retentionAt05In(tabledIn) : tabledIn;
}
