import { need } from '../need.ts';

/** Coefficients B(2k) / (2k (2k − 1)) of Stirling's series, k = 1 to 7. */
const stirling = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156];

/**
 * What ln Γ(x) has over the leading terms of Stirling's formula: ln Γ(x) − [(x − ½) ln x − x + ½ ln 2π], with x = `x`.
 * @param x - Argument, no unit; at least 10, where the series is good to 1e-16
 * @returns Remainder, no unit
 * @throws RangeError if `x` is below 10
 * @source dlmf, eq. 5.11.1
 * @example stirlingRemainder(10) //=> 0.0083305634
 */
export function stirlingRemainder(x: number): number {
  need('stirlingRemainder', 'x', x, { atLeast: 10 });
  const inverseSquare = 1 / (x * x);
  return stirling.reduceRight((sum, coefficient) => sum * inverseSquare + coefficient, 0) / x;
}

/**
 * Natural logarithm of the gamma function, ln Γ(x), with x = `x`: Stirling's series, after the recurrence Γ(x + 1) = x Γ(x) has carried x to 10.
 * @param x - Argument, no unit; above 0
 * @returns ln Γ(x), no unit
 * @throws RangeError if `x` is not above 0
 * @source dlmf, eq. 5.5.1 and 5.11.1
 * @example lnGamma(5) //=> 3.17805383034795
 */
export function lnGamma(x: number): number {
  need('lnGamma', 'x', x, { above: 0 });
  let product = 1;
  let shifted = x;
  while (shifted < 10) {
    product *= shifted;
    shifted += 1;
  }
  const leading = (shifted - 0.5) * Math.log(shifted) - shifted + 0.5 * Math.log(2 * Math.PI);
  return leading + stirlingRemainder(shifted) - Math.log(product);
}
