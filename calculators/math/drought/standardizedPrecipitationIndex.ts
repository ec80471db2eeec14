import { need } from '../need.ts';
import { inverseNormal } from '../special/inverseNormal.ts';
import { regularizedIncompleteGamma } from '../special/regularizedIncompleteGamma.ts';
import { type GammaFit, gammaFitLikelihood, gammaFitThom } from './gammaFitThom.ts';

/** Beyond this the fitted curve says nothing that a record of some decades could bear out. */
const defaultLimit = 3;

/**
 * Standardized precipitation index of an amount under a known gamma distribution with a share of zeros: H = q + (1 − q) P(α, x / β), index =
 * Φ⁻¹(H), kept within ± the limit, with x = `amount`, α = `shape`, β = `scale`, q = `zeroShare`. An amount of zero stands at the top of the zeros,
 * H = q; with `centersZeros`, at their middle, q / 2.
 * @param options.amount - Rain of the period, unit of `scale`; at least 0
 * @param options.shape - Gamma shape, no unit; above 0
 * @param options.scale - Gamma scale, unit of the rain; above 0
 * @param options.zeroShare - Share of years without rain in this period; 0 to below 1
 * @param options.centersZeros - Whether an amount of zero counts as the middle of the zeros; no if left out
 * @param options.limit - Largest index shown either way; above 0; 3 if left out
 * @returns Standardized precipitation index, no unit
 * @throws RangeError if a parameter is outside its range
 * @source edwards-mckee-1997, computation of the index
 * @example indexUnderGamma({ amount: 10, shape: 2, scale: 50, zeroShare: 0.1 }) //=> -1.196397
 */
export function indexUnderGamma({
  amount,
  shape,
  scale,
  zeroShare,
  centersZeros = false,
  limit = defaultLimit,
}: GammaFit & { readonly amount: number; readonly zeroShare: number; readonly centersZeros?: boolean; readonly limit?: number }): number {
  need('indexUnderGamma', 'amount', amount, { atLeast: 0 });
  need('indexUnderGamma', 'scale', scale, { above: 0 });
  need('indexUnderGamma', 'zeroShare', zeroShare, { atLeast: 0, below: 1 });
  need('indexUnderGamma', 'limit', limit, { above: 0, atMost: 8 });
  const probability = amount === 0 && centersZeros ? zeroShare / 2 : zeroShare + (1 - zeroShare) * regularizedIncompleteGamma(shape, amount / scale);
  if (probability <= 0) return -limit;
  if (probability >= 1) return limit;
  return Math.min(limit, Math.max(-limit, inverseNormal(probability)));
}

/**
 * Standardized precipitation index of an amount against a record of the same period in other years: gamma distribution fitted to the years with
 * rain, zeros as their share m / n, then the exact inverse normal. Say with it how long the record is: `indexStandardError`.
 * @param options.amount - Rain of the period in question, any one unit; at least 0
 * @param options.record - Rain of the same period in each year of the record, same unit; ten years or more, four or more of them with rain
 * @param options.fit - `likelihood` (exact) or `thom` (the usual approximation)
 * @param options.centersZeros - Whether an amount of zero counts as the middle of the zeros; no if left out
 * @param options.limit - Largest index shown either way; above 0; 3 if left out
 * @returns Standardized precipitation index, no unit
 * @throws RangeError if the record is too short or too dry to fit, or a parameter is outside its range
 * @source edwards-mckee-1997, computation of the index
 * @example standardizedPrecipitationIndex({ amount: 3, record: [1, 2, 2.5, 3, 3, 3.5, 4, 4, 5, 6], fit: 'thom' }) //=> -0.13
 */
export function standardizedPrecipitationIndex({
  amount,
  record,
  fit,
  centersZeros = false,
  limit = defaultLimit,
}: {
  readonly amount: number;
  readonly record: readonly number[];
  readonly fit: 'likelihood' | 'thom';
  readonly centersZeros?: boolean;
  readonly limit?: number;
}): number {
  need('standardizedPrecipitationIndex', 'record.length', record.length, { atLeast: 10 });
  for (const each of record) need('standardizedPrecipitationIndex', 'record', each, { atLeast: 0 });
  const wet = record.filter((each) => each > 0);
  need('standardizedPrecipitationIndex', 'years with rain', wet.length, { atLeast: 4 });
  const gamma = fit === 'thom' ? gammaFitThom(wet) : gammaFitLikelihood(wet);
  return indexUnderGamma({ ...gamma, amount, zeroShare: 1 - wet.length / record.length, centersZeros, limit });
}
