import { need } from '../need.ts';

/**
 * Share of their full use that plants still manage: Ks = (TAW − Dr) / ((1 − p) TAW) once Dr is past p TAW, else 1,
 * with Dr = `depletionMm`, TAW = `totalAvailableMm`, p = `depletionFraction`.
 * @param options.depletionMm - Water missing from the root zone, millimeters; 0 to `totalAvailableMm`
 * @param options.totalAvailableMm - Total available water, millimeters; above 0
 * @param options.depletionFraction - Share taken before stress; above 0, below 1
 * @returns Stress coefficient, 0 to 1
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 84
 * @example stressCoefficient({ depletionMm: 67, totalAvailableMm: 160, depletionFraction: 0.4 }) //=> 0.97
 */
export function stressCoefficient({
  depletionMm,
  totalAvailableMm,
  depletionFraction,
}: {
  readonly depletionMm: number;
  readonly totalAvailableMm: number;
  readonly depletionFraction: number;
}): number {
  need('stressCoefficient', 'totalAvailableMm', totalAvailableMm, { above: 0 });
  need('stressCoefficient', 'depletionMm', depletionMm, { atLeast: 0, atMost: totalAvailableMm });
  need('stressCoefficient', 'depletionFraction', depletionFraction, { above: 0, below: 1 });
  return Math.min(1, (totalAvailableMm - depletionMm) / ((1 - depletionFraction) * totalAvailableMm));
}
