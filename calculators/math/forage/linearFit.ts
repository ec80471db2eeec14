import { need } from '../need.ts';

export interface LinearFit {
  readonly slope: number;
  readonly intercept: number;
  readonly rSquared: number;
  /** Scatter of y about the line, the unit of y. */
  readonly residualDeviation: number;
  readonly slopeError: number;
  readonly interceptError: number;
}

/**
 * Straight line through pairs by least squares: slope = Sxy / Sxx, intercept = mean y - slope mean x, with standard errors and the share of the
 * variance explained.
 * @param pairs - Pairs x, y; three or more, not all at the same x
 * @returns Slope, intercept, r squared, residual standard deviation, standard errors of slope and intercept
 * @throws RangeError if there are fewer than three pairs, a value is not finite, or all x are equal
 * @source nist-norris, model y = B0 + B1 x
 * @example linearFit([[0, 1], [1, 3], [2, 5]]).slope //=> 2
 */
export function linearFit(pairs: readonly (readonly [x: number, y: number])[]): LinearFit {
  const count = pairs.length;
  need('linearFit', 'pairs.length', count, { atLeast: 3 });
  for (const [x, y] of pairs) {
    need('linearFit', 'x', x);
    need('linearFit', 'y', y);
  }
  const meanX = pairs.reduce((sum, [x]) => sum + x, 0) / count;
  const meanY = pairs.reduce((sum, [, y]) => sum + y, 0) / count;
  // Deviations first: the textbook shortcut with sums of squares loses digits when x is far from 0.
  const squaresX = pairs.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
  need('linearFit', 'spread of x', squaresX, { above: 0 });
  const products = pairs.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  const squaresY = pairs.reduce((sum, [, y]) => sum + (y - meanY) ** 2, 0);
  const slope = products / squaresX;
  const intercept = meanY - slope * meanX;
  const residuals = pairs.reduce((sum, [x, y]) => sum + (y - intercept - slope * x) ** 2, 0);
  const variance = residuals / (count - 2);
  return {
    slope,
    intercept,
    rSquared: squaresY === 0 ? 1 : 1 - residuals / squaresY,
    residualDeviation: Math.sqrt(variance),
    slopeError: Math.sqrt(variance / squaresX),
    interceptError: Math.sqrt(variance * (1 / count + meanX ** 2 / squaresX)),
  };
}
