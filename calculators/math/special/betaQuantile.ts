import { need } from '../need.ts';
import { betaShares } from './regularizedIncompleteBeta.ts';

/**
 * The x at which I_x(a, b) = `probability`, with a = `a`, b = `b`: by bisection, which cannot stray, to the last bit of x.
 * @param probability - Share of the beta distribution at or below x; 0 to 1
 * @param a - First shape, no unit; above 0
 * @param b - Second shape, no unit; above 0
 * @returns Quantile of the beta distribution, 0 to 1
 * @throws RangeError if a parameter is outside its range
 * @source dlmf, eq. 8.17.1
 * @example betaQuantile(0.6875, 2, 3) //=> 0.5000000
 */
export function betaQuantile(probability: number, a: number, b: number): number {
  need('betaQuantile', 'probability', probability, { atLeast: 0, atMost: 1 });
  const shareBelow = betaShares(a, b);
  if (probability === 0 || probability === 1) return probability;
  let low = 0;
  let high = 1;
  for (let middle = 0.5; middle > low && middle < high; middle = (low + high) / 2) {
    if (shareBelow(middle) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
