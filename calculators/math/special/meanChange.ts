import { need } from '../need.ts';
import { studentQuantile } from './studentQuantile.ts';

/** Later mean less earlier mean, with the range that holds the true change at the stated confidence. */
export interface MeanChange {
  readonly change: number;
  readonly low: number;
  readonly high: number;
}
const meanOf = (readings: readonly number[]): number => readings.reduce((sum, each) => sum + each, 0) / readings.length;
const spreadOf = (readings: readonly number[]): number => {
  const mean = meanOf(readings);
  return readings.reduce((sum, each) => sum + (each - mean) ** 2, 0);
};

/**
 * Change of a mean from one visit to the next: the difference of the means, give or take t s √(1/n1 + 1/n2), with s the pooled standard deviation and t at
 * n1 + n2 − 2 degrees of freedom for `confidencePercent`.
 * @param options.earlier - Readings of the first visit, in any one unit; at least two, none of them infinite
 * @param options.later - Readings of the second visit, in the same unit; at least two
 * @param options.confidencePercent - How often such a range should hold the truth, percent; above 0, below 100
 * @returns Change and the ends of its range, in the unit of the readings
 * @throws RangeError if a visit has fewer than two readings, one is not finite, or the confidence is outside its range
 * @source nist-sematech-handbook, two-sample t interval
 * @example meanChange({ earlier: [1, 2, 3], later: [2, 3, 4], confidencePercent: 95 }).high //=> 3.267
 */
export function meanChange({
  earlier,
  later,
  confidencePercent,
}: {
  readonly earlier: readonly number[];
  readonly later: readonly number[];
  readonly confidencePercent: number;
}): MeanChange {
  need('meanChange', 'the number of earlier readings', earlier.length, { atLeast: 2 });
  need('meanChange', 'the number of later readings', later.length, { atLeast: 2 });
  for (const reading of [...earlier, ...later]) need('meanChange', 'a reading', reading, {});
  need('meanChange', 'confidencePercent', confidencePercent, { above: 0, below: 100 });
  const change = meanOf(later) - meanOf(earlier);
  const degreesOfFreedom = earlier.length + later.length - 2;
  const deviation = Math.sqrt((spreadOf(earlier) + spreadOf(later)) / degreesOfFreedom);
  const reach = studentQuantile(0.5 + confidencePercent / 200, degreesOfFreedom) * deviation * Math.sqrt(1 / earlier.length + 1 / later.length);
  return { change, low: change - reach, high: change + reach };
}
