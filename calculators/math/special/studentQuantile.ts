import { need } from '../need.ts';
import { betaQuantile } from './betaQuantile.ts';

/**
 * Student's t with the share `probability` below it: t = √(ν (1 − x) / x), x the beta quantile of twice the smaller tail, shapes ν / 2 and 1 / 2,
 * with ν = `degreesOfFreedom`.
 * @param probability - Share of the distribution at or below t; above 0, below 1
 * @param degreesOfFreedom - Degrees of freedom, no unit; above 0, at most 1,000,000
 * @returns Quantile of Student's t, no unit
 * @throws RangeError if a parameter is outside its range
 * @source dlmf, eq. 8.17.1 (as the regularized incomplete beta function)
 * @example studentQuantile(0.975, 4) //=> 2.776
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  need('studentQuantile', 'probability', probability, { above: 0, below: 1 });
  need('studentQuantile', 'degreesOfFreedom', degreesOfFreedom, { above: 0, atMost: 1e6 });
  if (probability === 0.5) return 0;
  const x = betaQuantile(2 * Math.min(probability, 1 - probability), degreesOfFreedom / 2, 0.5);
  return Math.sign(probability - 0.5) * Math.sqrt((degreesOfFreedom * (1 - x)) / x);
}
