import { need } from '../need.ts';

/** Coefficients B(2k) / 2k of the asymptotic series of ψ, k = 1 to 7. */
const psiSeries = [1 / 12, -1 / 120, 1 / 252, -1 / 240, 1 / 132, -691 / 32760, 1 / 12];
/** Bernoulli numbers B(2k), k = 1 to 7: the asymptotic series of ψ′. */
const bernoulli = [1 / 6, -1 / 30, 1 / 42, -1 / 30, 5 / 66, -691 / 2730, 7 / 6];

/**
 * Digamma function ψ(x) = Γ′(x) / Γ(x), with x = `x`: asymptotic series, after the recurrence ψ(x + 1) = ψ(x) + 1 / x has carried x to 10.
 * @param x - Argument, no unit; above 0
 * @returns ψ(x), no unit
 * @throws RangeError if `x` is not above 0
 * @source dlmf, eq. 5.5.2 and 5.11.2
 * @example digamma(1) //=> -0.5772156649015
 */
export function digamma(x: number): number {
  need('digamma', 'x', x, { above: 0 });
  let passed = 0;
  let shifted = x;
  while (shifted < 10) {
    passed += 1 / shifted;
    shifted += 1;
  }
  const inverseSquare = 1 / (shifted * shifted);
  const series = psiSeries.reduceRight((sum, coefficient) => (sum + coefficient) * inverseSquare, 0);
  return Math.log(shifted) - 0.5 / shifted - series - passed;
}

/**
 * Trigamma function ψ′(x), the slope of the digamma function, with x = `x`: asymptotic series, after the recurrence ψ′(x + 1) = ψ′(x) − 1 / x².
 * @param x - Argument, no unit; above 0
 * @returns ψ′(x), no unit
 * @throws RangeError if `x` is not above 0
 * @source dlmf, eq. 5.15.5 and 5.15.8
 * @example trigamma(1) //=> 1.64493406684823
 */
export function trigamma(x: number): number {
  need('trigamma', 'x', x, { above: 0 });
  let passed = 0;
  let shifted = x;
  while (shifted < 10) {
    passed += 1 / (shifted * shifted);
    shifted += 1;
  }
  const inverseSquare = 1 / (shifted * shifted);
  const series = bernoulli.reduceRight((sum, coefficient) => (sum + coefficient) * inverseSquare, 0) / shifted;
  return 1 / shifted + 0.5 * inverseSquare + series + passed;
}
