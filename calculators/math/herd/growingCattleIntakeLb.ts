import { need } from '../need.ts';
import { poundsPerKilogram } from '../water/waterVolume.ts';
import { maintenanceEnergyMcalPerKg } from './maintenanceEnergyMcalPerKg.ts';

/** Shrunk weight over full weight. */
const shrink = 0.96;

/**
 * Dry matter that growing cattle eat by the equation of 1996: W^0.75 (0.2435 e - 0.0466 e^2 - c) / e, with W the shrunk weight in kg, e the net
 * energy for maintenance of `tdnPercent`, c = 0.1128 for calves, 0.0869 for yearlings.
 * @param options.weightLb - Live weight, lb; 200 to 1,600
 * @param options.tdnPercent - Total digestible nutrients of the diet, percent of dry matter; 50 to 85
 * @param options.age - Age: calf or yearling
 * @returns Dry matter eaten, lb per day
 * @throws RangeError if a value is outside its range
 * @source nrc-beef-1996, chapter 7
 * @example growingCattleIntakeLb({ weightLb: 700, tdnPercent: 60, age: 'yearling' }) //=> 18.7
 */
export function growingCattleIntakeLb({
  weightLb,
  tdnPercent,
  age,
}: {
  readonly weightLb: number;
  readonly tdnPercent: number;
  readonly age: 'calf' | 'yearling';
}): number {
  need('growingCattleIntakeLb', 'weightLb', weightLb, { atLeast: 200, atMost: 1600 });
  need('growingCattleIntakeLb', 'tdnPercent', tdnPercent, { atLeast: 50, atMost: 85 });
  const energy = maintenanceEnergyMcalPerKg(tdnPercent);
  const metabolicWeight = ((shrink * weightLb) / poundsPerKilogram) ** 0.75;
  const eatenKg = (metabolicWeight * (0.2435 * energy - 0.0466 * energy ** 2 - (age === 'calf' ? 0.1128 : 0.0869))) / energy;
  return eatenKg * poundsPerKilogram;
}
