import { need } from '../need.ts';
import { regularizedIncompleteBeta } from '../special/regularizedIncompleteBeta.ts';

/** More plots than this nobody clips; the answer is then "stratify the pasture". */
const mostPlots = 100_000;

/**
 * Plots to clip for a wanted closeness: the least n with n >= (t c / E)^2, with t of n - 1 degrees of freedom at `confidencePercent`, c =
 * `variationPercent`, E = `withinPercent`.
 * @param options.variationPercent - Standard deviation among plots, percent of their mean; at least 0, at most 500
 * @param options.withinPercent - How close the mean should be, percent of it; at least 1, at most 100
 * @param options.confidencePercent - Confidence, percent; at least 50, below 100
 * @returns Plots, whole; at least 2
 * @throws RangeError if a value is outside its range
 * @source missouri-sample-size, number of plots in relative terms
 * @example plotsNeeded({ variationPercent: 45, withinPercent: 20, confidencePercent: 80 }) //=> 10
 */
export function plotsNeeded({
  variationPercent,
  withinPercent,
  confidencePercent,
}: {
  readonly variationPercent: number;
  readonly withinPercent: number;
  readonly confidencePercent: number;
}): number {
  need('plotsNeeded', 'variationPercent', variationPercent, { atLeast: 0, atMost: 500 });
  need('plotsNeeded', 'withinPercent', withinPercent, { atLeast: 1, atMost: 100 });
  need('plotsNeeded', 'confidencePercent', confidencePercent, { atLeast: 50, below: 100 });
  // n >= (t c / E)^2 where Student's t lies within E sqrt(n) / c at least as often as is wanted: one share, where t itself takes fifty.
  const enough = (plots: number): boolean => {
    const degreesOfFreedom = plots - 1;
    const withinSquared = plots * (withinPercent / variationPercent) ** 2;
    return regularizedIncompleteBeta(degreesOfFreedom / (degreesOfFreedom + withinSquared), degreesOfFreedom / 2, 0.5) <= 1 - confidencePercent / 100;
  };
  // Student's t falls as plots are added, so once a count is enough every larger one is: halve the span between too few and enough.
  let tooFew = 1;
  let plots = 2;
  while (!enough(plots)) {
    need('plotsNeeded', 'plots', plots, { atMost: mostPlots });
    tooFew = plots;
    plots *= 2;
  }
  while (plots - tooFew > 1) {
    const middle = Math.floor((plots + tooFew) / 2);
    if (enough(middle)) plots = middle;
    else tooFew = middle;
  }
  return plots;
}
