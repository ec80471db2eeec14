import { need } from '../need.ts';
import { studentQuantile } from '../special/studentQuantile.ts';

/**
 * Mean of some plots and the interval that holds the pasture's true mean: m +- t s / sqrt(n), with t of n - 1 degrees of freedom at
 * `confidencePercent`.
 * @param values - One value for each plot, any unit; two or more
 * @param confidencePercent - Confidence, percent; above 0, below 100
 * @returns Mean, low and high end in the unit of the values; variation: standard deviation in percent of the mean (Infinity for a mean of 0)
 * @throws RangeError if there are fewer than two values or a value is outside its range
 * @source missouri-sample-size, error for a given number of samples
 * @example sampleInterval([800, 1000, 1200], 80).mean //=> 1000
 */
export function sampleInterval(
  values: readonly number[],
  confidencePercent: number,
): { readonly mean: number; readonly low: number; readonly high: number; readonly variationPercent: number } {
  const count = values.length;
  need('sampleInterval', 'values.length', count, { atLeast: 2 });
  need('sampleInterval', 'confidencePercent', confidencePercent, { above: 0, below: 100 });
  for (const value of values) need('sampleInterval', 'values', value);
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  const deviation = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (count - 1));
  const error = (studentQuantile(0.5 + confidencePercent / 200, count - 1) * deviation) / Math.sqrt(count);
  return { mean, low: mean - error, high: mean + error, variationPercent: deviation === 0 ? 0 : (100 * deviation) / Math.abs(mean) };
}
