import { need } from '../need.ts';
import { regularizedIncompleteGamma, upperRegularizedIncompleteGamma } from './regularizedIncompleteGamma.ts';

/**
 * Normal distribution function Φ(z) = ½ Q(½, z² / 2) for z below 0, and 1 − Φ(−z) above, with z = `z`.
 * @param z - Standard normal value, no unit; any finite number
 * @returns Share of a standard normal distribution at or below z, 0 to 1
 * @throws RangeError if `z` is not finite
 * @source dlmf, eq. 7.11.2 and 7.2.2
 * @example normalProbability(-1.5) //=> 0.0668072012689
 */
export function normalProbability(z: number): number {
  need('normalProbability', 'z', z);
  const half = (z * z) / 2;
  return z < 0 ? 0.5 * upperRegularizedIncompleteGamma(0.5, half) : 0.5 + 0.5 * regularizedIncompleteGamma(0.5, half);
}
