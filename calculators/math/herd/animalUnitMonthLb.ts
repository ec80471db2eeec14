import { need } from '../need.ts';

/**
 * Forage of animal units over a time: u d T, with u = `animalUnits`, d = `lbPerDay` of the convention, T = `days` (30, 30.4, 30.5 or 365 by
 * convention). Work in pounds a day; the month comes last.
 * @param options.animalUnits - Animal units, no unit; at least 0
 * @param options.lbPerDay - Forage of one animal unit, lb per day; above 0
 * @param options.days - Days that count as the month or the year, days; above 0
 * @returns Forage, lb on the basis of `lbPerDay`
 * @throws RangeError if a value is outside its range
 * @source nrph-2003, chapter 6 (26 lb, 30.4 days)
 * @example animalUnitMonthLb({ animalUnits: 1, lbPerDay: 26, days: 30 }) //=> 780
 */
export function animalUnitMonthLb({
  animalUnits,
  lbPerDay,
  days,
}: {
  readonly animalUnits: number;
  readonly lbPerDay: number;
  readonly days: number;
}): number {
  need('animalUnitMonthLb', 'animalUnits', animalUnits, { atLeast: 0 });
  need('animalUnitMonthLb', 'lbPerDay', lbPerDay, { above: 0 });
  need('animalUnitMonthLb', 'days', days, { above: 0 });
  return animalUnits * lbPerDay * days;
}
