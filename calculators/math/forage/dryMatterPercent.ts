import { need } from '../need.ts';

/**
 * Dry matter from a sample weighed before and after drying: 100 (W2 - c) / (W1 - c), with W1 = `wetWeight`, W2 = `dryWeight`, c = `plateWeight`.
 * @param options.wetWeight - Sample and plate before drying, any unit of weight; above `plateWeight`
 * @param options.dryWeight - Sample and plate when the weight stops falling, the same unit; above `plateWeight`, at most `wetWeight`
 * @param options.plateWeight - Empty plate, the same unit; at least 0
 * @returns Dry matter, percent of the wet weight
 * @throws RangeError if a value is outside its range
 * @source umaine-pasture-lesson-1, appendix E
 * @example dryMatterPercent({ wetWeight: 9, dryWeight: 3, plateWeight: 1 }) //=> 25
 */
export function dryMatterPercent({
  wetWeight,
  dryWeight,
  plateWeight,
}: {
  readonly wetWeight: number;
  readonly dryWeight: number;
  readonly plateWeight: number;
}): number {
  need('dryMatterPercent', 'plateWeight', plateWeight, { atLeast: 0 });
  need('dryMatterPercent', 'wetWeight', wetWeight, { above: plateWeight });
  need('dryMatterPercent', 'dryWeight', dryWeight, { above: plateWeight, atMost: wetWeight });
  return (100 * (dryWeight - plateWeight)) / (wetWeight - plateWeight);
}
