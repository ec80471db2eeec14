import { need } from '../need.ts';
import { lnGamma, stirlingRemainder } from './lnGamma.ts';

/** A shape past this is a spike: the series no longer settles. */
export const mostGammaShape = 100_000;

/** Relative size below which another term or another step of the fraction changes nothing. */
const negligible = 1e-17;

/** x^a e^(−x) / Γ(a + 1). Above a = 10 from the distance to the peak, since a ln x − x − ln Γ(a + 1) would cancel nearly whole. */
function poissonTerm(shape: number, x: number): number {
  if (shape < 10) return Math.exp(shape * Math.log(x) - x - lnGamma(shape + 1));
  const away = (x - shape) / shape;
  return Math.exp(-shape * (away - Math.log1p(away)) - stirlingRemainder(shape)) / Math.sqrt(2 * Math.PI * shape);
}

/** P(a, x) by its power series: quick for x below a + 1. */
function lowerBySeries(shape: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let above = shape + 1; term > negligible * sum; above += 1) {
    term *= x / above;
    sum += term;
  }
  return poissonTerm(shape, x) * sum;
}

/** Q(a, x) by its continued fraction (modified Lentz): quick for x above a + 1. */
function upperByFraction(shape: number, x: number): number {
  let b = x + 1 - shape;
  let c = Number.MAX_VALUE;
  let d = 1 / b;
  let fraction = d;
  for (let step = 1, change = 0; Math.abs(change - 1) > 1e-16 && step < 100_000; step += 1) {
    const a = step * (shape - step);
    b += 2;
    d = 1 / (b + a * d);
    c = b + a / c;
    change = c * d;
    fraction *= change;
  }
  return poissonTerm(shape, x) * shape * fraction;
}

/**
 * Regularized lower incomplete gamma function P(a, x) = γ(a, x) / Γ(a), with a = `shape` and x = `x`: the share of a gamma distribution below x
 * scales. Power series for x < a + 1, continued fraction beyond.
 * @param shape - Shape a, no unit; above 0, at most 100000
 * @param x - Upper limit of the integral, no unit; at least 0
 * @returns P(a, x), 0 to 1
 * @throws RangeError if `shape` or `x` is outside its range
 * @source dlmf, eq. 8.7.1 and 8.9.2
 * @example regularizedIncompleteGamma(2, 1) //=> 0.264241117657115
 */
export function regularizedIncompleteGamma(shape: number, x: number): number {
  need('regularizedIncompleteGamma', 'shape', shape, { above: 0, atMost: mostGammaShape });
  need('regularizedIncompleteGamma', 'x', x, { atLeast: 0 });
  if (x === 0) return 0;
  return x < shape + 1 ? lowerBySeries(shape, x) : 1 - upperByFraction(shape, x);
}

/**
 * Regularized upper incomplete gamma function Q(a, x) = 1 − P(a, x), with a = `shape` and x = `x`, exact where P is so near 1 that the difference
 * would lose its digits.
 * @param shape - Shape a, no unit; above 0, at most 100000
 * @param x - Lower limit of the integral, no unit; at least 0
 * @returns Q(a, x), 0 to 1
 * @throws RangeError if `shape` or `x` is outside its range
 * @source dlmf, eq. 8.7.1 and 8.9.2
 * @example upperRegularizedIncompleteGamma(1, 5) //=> 0.0067379469991
 */
export function upperRegularizedIncompleteGamma(shape: number, x: number): number {
  need('upperRegularizedIncompleteGamma', 'shape', shape, { above: 0, atMost: mostGammaShape });
  need('upperRegularizedIncompleteGamma', 'x', x, { atLeast: 0 });
  if (x === 0) return 1;
  return x < shape + 1 ? 1 - lowerBySeries(shape, x) : upperByFraction(shape, x);
}
