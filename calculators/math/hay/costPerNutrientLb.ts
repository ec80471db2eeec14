import { need } from '../need.ts';

const poundsPerTon = 2000;

/**
 * Pounds of a nutrient in a ton of feed: 2,000 d n, with d, n = `dryMatterPercent`, `nutrientPercent` over 100.
 * @param options.dryMatterPercent - Dry matter of the feed as sold, percent; above 0, at most 100
 * @param options.nutrientPercent - Nutrient (protein, TDN), percent of dry matter; at least 0, at most 100
 * @returns Nutrient, lb per ton as fed
 * @throws RangeError if a value is outside its range
 * @source montana-richland-2022, cost per pound of protein
 * @example nutrientLbPerTon({ dryMatterPercent: 91, nutrientPercent: 15 }) //=> 273
 */
export function nutrientLbPerTon({
  dryMatterPercent,
  nutrientPercent,
}: {
  readonly dryMatterPercent: number;
  readonly nutrientPercent: number;
}): number {
  need('nutrientLbPerTon', 'dryMatterPercent', dryMatterPercent, { above: 0, atMost: 100 });
  need('nutrientLbPerTon', 'nutrientPercent', nutrientPercent, { atLeast: 0, atMost: 100 });
  return (((poundsPerTon * dryMatterPercent) / 100) * nutrientPercent) / 100;
}

/**
 * What a pound of a nutrient costs in a feed: p / (2,000 d n), with p = `pricePerTon`, d, n = `dryMatterPercent`, `nutrientPercent` over 100.
 * @param options.pricePerTon - Price delivered, dollars per ton as fed; at least 0
 * @param options.dryMatterPercent - Dry matter of the feed as sold, percent; above 0, at most 100
 * @param options.nutrientPercent - Nutrient (protein, TDN), percent of dry matter; above 0, at most 100
 * @returns Cost, dollars per lb of the nutrient
 * @throws RangeError if a value is outside its range
 * @source montana-richland-2022, cost per pound of protein
 * @example costPerNutrientLb({ pricePerTon: 200, dryMatterPercent: 91, nutrientPercent: 15 }) //=> 0.73
 */
export function costPerNutrientLb({
  pricePerTon,
  dryMatterPercent,
  nutrientPercent,
}: {
  readonly pricePerTon: number;
  readonly dryMatterPercent: number;
  readonly nutrientPercent: number;
}): number {
  need('costPerNutrientLb', 'pricePerTon', pricePerTon, { atLeast: 0 });
  need('costPerNutrientLb', 'nutrientPercent', nutrientPercent, { above: 0, atMost: 100 });
  return pricePerTon / nutrientLbPerTon({ dryMatterPercent, nutrientPercent });
}
