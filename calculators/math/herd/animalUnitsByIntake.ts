import { need } from '../need.ts';
import { dailyIntakeLb } from './dailyIntakeLb.ts';

/**
 * Animal units of one animal by what it eats: W p / (100 d), with W = `weightLb`, p = `intakePercent`, d = `lbPerDay` of the convention. For kinds
 * that are not cattle.
 * @param options.weightLb - Live weight, lb; above 0
 * @param options.intakePercent - Dry matter eaten in a day, percent of weight; above 0, at most 8
 * @param options.lbPerDay - Forage of one animal unit, lb per day; above 0
 * @returns Animal units, no unit
 * @throws RangeError if a value is outside its range
 * @source texas-animal-units, chart (26 lb a day)
 * @example animalUnitsByIntake({ weightLb: 130, intakePercent: 3.5, lbPerDay: 26 }) //=> 0.18
 */
export function animalUnitsByIntake({
  weightLb,
  intakePercent,
  lbPerDay,
}: {
  readonly weightLb: number;
  readonly intakePercent: number;
  readonly lbPerDay: number;
}): number {
  need('animalUnitsByIntake', 'lbPerDay', lbPerDay, { above: 0 });
  return dailyIntakeLb({ head: 1, weightLb, intakePercent }) / lbPerDay;
}
