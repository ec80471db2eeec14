import { need } from '../need.ts';

/**
 * Water in a soil sample by weight: w = 100 (m − d)/d, with m = `moistG`, d = `dryG`. The dry weight stands below, not the moist one.
 * @param moistG - Weight as taken, g; at least `dryG`
 * @param dryG - Weight when it stops falling in an oven at 105 °C, g; above 0
 * @returns Water, percent of the dry weight
 * @throws RangeError if a weight is outside its range
 * @source common practice
 * @example gravimetricWaterPercent(361.6, 298.8) //=> 21.0
 */
export function gravimetricWaterPercent(moistG: number, dryG: number): number {
  need('gravimetricWaterPercent', 'dryG', dryG, { above: 0 });
  need('gravimetricWaterPercent', 'moistG', moistG, { atLeast: dryG });
  return (100 * (moistG - dryG)) / dryG;
}

/**
 * Dry weight of a sample whose water content is known from a smaller one: d = m/(1 + w/100), with m = `moistG`, w = `waterPercent`.
 * @param moistG - Weight as taken, g; above 0
 * @param waterPercent - Water, percent of the dry weight; 0 or more
 * @returns Oven-dry weight, g
 * @throws RangeError if a parameter is outside its range
 * @source common practice
 * @example dryWeightG(600, 10) //=> 545.5
 */
export function dryWeightG(moistG: number, waterPercent: number): number {
  need('dryWeightG', 'moistG', moistG, { above: 0 });
  need('dryWeightG', 'waterPercent', waterPercent, { atLeast: 0 });
  return moistG / (1 + waterPercent / 100);
}
