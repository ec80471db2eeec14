import { need } from '../need.ts';
import { lnGamma } from './lnGamma.ts';

/** Keeps the modified Lentz steps from dividing by zero. */
const tiny = 1e-300;
const awayFromZero = (value: number): number => (Math.abs(value) < tiny ? tiny : value);

/** The continued fraction of I_x(a, b), which converges fast for x below (a + 1) / (a + b + 2). */
function fraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / awayFromZero(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let step = 1, change = 0; Math.abs(change - 1) > 1e-16 && step < 100_000; step += 1) {
    const at = a + 2 * step;
    const even = (step * (b - step) * x) / ((at - 1) * at);
    d = 1 / awayFromZero(1 + even * d);
    c = awayFromZero(1 + even / c);
    value *= c * d;
    const odd = (-(a + step) * (a + b + step) * x) / (at * (at + 1));
    d = 1 / awayFromZero(1 + odd * d);
    c = awayFromZero(1 + odd / c);
    change = c * d;
    value *= change;
  }
  return value;
}

/**
 * I_x(a, b) as a function of x, with a = `a`, b = `b`: what does not depend on x is worked out once, for those who ask at one x after another.
 * @param a - First shape, no unit; above 0
 * @param b - Second shape, no unit; above 0
 * @returns x, 0 to 1, to the share of the beta distribution at or below it, 0 to 1; throws RangeError for another x
 * @throws RangeError if a shape is outside its range
 * @source dlmf, eq. 8.17.22
 * @example betaShares(2, 3)(0.5) //=> 0.6875
 */
export function betaShares(a: number, b: number): (x: number) => number {
  need('betaShares', 'a', a, { above: 0, atMost: 1e6 });
  need('betaShares', 'b', b, { above: 0, atMost: 1e6 });
  const [both, first, second] = [lnGamma(a + b), lnGamma(a), lnGamma(b)];
  return (x) => {
    need('betaShares', 'x', x, { atLeast: 0, atMost: 1 });
    if (x === 0 || x === 1) return x;
    const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) + both - first - second);
    return x < (a + 1) / (a + b + 2) ? (front * fraction(x, a, b)) / a : 1 - (front * fraction(1 - x, b, a)) / b;
  };
}

/**
 * Regularized incomplete beta function I_x(a, b), with x = `x`, a = `a`, b = `b`: the share of a beta distribution at or below x. Continued fraction.
 * @param x - Upper limit of the integral, no unit; 0 to 1
 * @param a - First shape, no unit; above 0
 * @param b - Second shape, no unit; above 0
 * @returns I_x(a, b), 0 to 1
 * @throws RangeError if a parameter is outside its range
 * @source dlmf, eq. 8.17.22
 * @example regularizedIncompleteBeta(0.5, 2, 3) //=> 0.6875
 */
export function regularizedIncompleteBeta(x: number, a: number, b: number): number {
  return betaShares(a, b)(x);
}
