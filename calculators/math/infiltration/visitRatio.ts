import { need } from '../need.ts';
import { studentQuantile } from '../special/studentQuantile.ts';
import { geometricMean } from './geometricMean.ts';

/** Later over earlier, with the range that holds the true ratio at the stated confidence. */
export interface VisitRatio {
  readonly ratio: number;
  readonly low: number;
  readonly high: number;
}

const logSpread = (rates: readonly number[]): number => {
  const middle = Math.log(geometricMean(rates));
  return rates.reduce((sum, rate) => sum + (Math.log(rate) - middle) ** 2, 0);
};

/**
 * Change from one visit to the next, on logarithms: ratio of the geometric means, times and divided by exp(t s √(1/n1 + 1/n2)), with s the pooled
 * standard deviation of the logarithms and t at n1 + n2 − 2 degrees of freedom for `confidencePercent`.
 * @param options.earlier - Rates of the rings of the first visit, in any one unit; at least two, each above 0
 * @param options.later - Rates of the rings of the second visit, in the same unit; at least two, each above 0
 * @param options.confidencePercent - How often such a range should hold the truth, percent; above 0, below 100
 * @returns Ratio later to earlier and the ends of its range, no unit
 * @throws RangeError if a visit has fewer than two rings, a rate is not above 0, or the confidence is outside its range
 * @source nist-sematech-handbook, two-sample t interval, here on logarithms
 * @example visitRatio({ earlier: [1, 1, 1], later: [2, 2, 2], confidencePercent: 95 }) //=> { ratio: 2, low: 2, high: 2 }
 */
export function visitRatio({
  earlier,
  later,
  confidencePercent,
}: {
  earlier: readonly number[];
  later: readonly number[];
  confidencePercent: number;
}): VisitRatio {
  need('visitRatio', 'the number of earlier rings', earlier.length, { atLeast: 2 });
  need('visitRatio', 'the number of later rings', later.length, { atLeast: 2 });
  need('visitRatio', 'confidencePercent', confidencePercent, { above: 0, below: 100 });
  const ratio = geometricMean(later) / geometricMean(earlier);
  const degreesOfFreedom = earlier.length + later.length - 2;
  const deviation = Math.sqrt((logSpread(earlier) + logSpread(later)) / degreesOfFreedom);
  const factor = Math.exp(
    studentQuantile(0.5 + confidencePercent / 200, degreesOfFreedom) * deviation * Math.sqrt(1 / earlier.length + 1 / later.length),
  );
  return { ratio, low: ratio / factor, high: ratio * factor };
}

/** A true ratio that may lie more than this many times above or below the one found is told by no range: 0.03 to 71 says nothing to go by. Our own. */
const mostTimesOff = 10;
/**
 * Whether the range of a ratio is narrow enough to tell: its high end at most ten times the ratio, so its low end at least a tenth of it.
 * @param options.ratio - Ratio later to earlier, no unit; above 0
 * @param options.high - High end of its range by `visitRatio`, no unit; at least the ratio
 * @returns Yes or no
 * @throws RangeError if the ratio is not above 0 or lies above the high end
 * @source our own
 * @example isBoundedRatio({ ratio: 1.5, high: 71 }) //=> false
 */
export function isBoundedRatio({ ratio, high }: { readonly ratio: number; readonly high: number }): boolean {
  need('isBoundedRatio', 'ratio', ratio, { above: 0, atMost: high });
  return high <= mostTimesOff * ratio;
}

/**
 * Factor that a change must exceed before it is more than scatter: exp(t s √(1/n1 + 1/n2)), with n1 = `earlierRings`, n2 = `laterRings`,
 * s = √ln(1 + c²) for rings that vary by c = `variationPercent` / 100, t as for `visitRatio` at `confidencePercent`. For planning, before there are rings.
 * @param options.earlierRings - Rings of the first visit, a whole number; at least 1
 * @param options.laterRings - Rings of the second visit, a whole number; at least 1, and at least 3 with the first
 * @param options.variationPercent - Standard deviation of rings side by side over their mean, percent; above 0 (80 is usual on pasture)
 * @param options.confidencePercent - How often such a range should hold the truth, percent; above 0, below 100
 * @returns Factor up or down, no unit, above 1
 * @throws RangeError if a parameter is outside its range
 * @source our own, the interval of `visitRatio` with a lognormal scatter
 * @example scatterFactor({ earlierRings: 3, laterRings: 3, variationPercent: 80, confidencePercent: 95 }) //=> 4.93
 */
export function scatterFactor({
  earlierRings,
  laterRings,
  variationPercent,
  confidencePercent,
}: {
  earlierRings: number;
  laterRings: number;
  variationPercent: number;
  confidencePercent: number;
}): number {
  need('scatterFactor', 'earlierRings', earlierRings, { atLeast: 1, whole: true });
  need('scatterFactor', 'laterRings', laterRings, { atLeast: 1, whole: true });
  need('scatterFactor', 'earlierRings + laterRings', earlierRings + laterRings, { atLeast: 3 });
  need('scatterFactor', 'variationPercent', variationPercent, { above: 0 });
  need('scatterFactor', 'confidencePercent', confidencePercent, { above: 0, below: 100 });
  const deviation = Math.sqrt(Math.log1p((variationPercent / 100) ** 2));
  const quantile = studentQuantile(0.5 + confidencePercent / 200, earlierRings + laterRings - 2);
  return Math.exp(quantile * deviation * Math.sqrt(1 / earlierRings + 1 / laterRings));
}

/** Rings side by side on pasture: standard deviation over mean, percent. */
export const usualVariationPercent = 80;

export type VisitVerdict = 'faster' | 'slower' | 'perhaps-faster' | 'perhaps-slower' | 'chance';
/** A change with what is said of it, and the factor that usual scatter alone can come to. */
export interface VisitChange extends VisitRatio {
  readonly scatterTimes: number;
  readonly verdict: VisitVerdict;
}
/**
 * One verdict from two tests of a change: by how much these rings differ among themselves (`visitRatio`), and by how much rings on pasture mostly do
 * (`scatterFactor` at `usualVariationPercent`). A few rings that happen to agree make any change look sure, so a change counts only when it passes both.
 * @param options.earlier - Rates of the rings of the first visit, in any one unit; at least two, each above 0
 * @param options.later - Rates of the rings of the second visit, in the same unit; at least two, each above 0
 * @param options.confidencePercent - How often such a range should hold the truth, percent; above 0, below 100
 * @returns The ratio later to earlier with its range, the factor of usual scatter, and the verdict: “perhaps” is past these rings' own scatter only
 * @throws RangeError if a visit has fewer than two rings, a rate is not above 0, or the confidence is outside its range
 * @source our own, on nist-sematech-handbook, two-sample t interval
 * @example visitChange({ earlier: [1, 1, 1], later: [2, 2, 2], confidencePercent: 95 }).verdict //=> 'perhaps-faster'
 */
export function visitChange({
  earlier,
  later,
  confidencePercent,
}: {
  earlier: readonly number[];
  later: readonly number[];
  confidencePercent: number;
}): VisitChange {
  const { ratio, low, high } = visitRatio({ earlier, later, confidencePercent });
  const scatterTimes = scatterFactor({
    earlierRings: earlier.length,
    laterRings: later.length,
    variationPercent: usualVariationPercent,
    confidencePercent,
  });
  const isBeyondUsual = Math.max(ratio, 1 / ratio) > scatterTimes;
  const verdict =
    low > 1 ? (isBeyondUsual ? 'faster' : 'perhaps-faster') : high < 1 ? (isBeyondUsual ? 'slower' : 'perhaps-slower') : ('chance' as const);
  return { ratio, low, high, scatterTimes, verdict };
}
