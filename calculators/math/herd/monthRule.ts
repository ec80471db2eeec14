import { animalUnitDay, monthDays } from '../../tables/animalUnits.ts';

/**
 * Pounds that one animal unit eats in a day and days that count as its month, by two published conventions: d and T of an animal-unit month d T.
 * @param day - Convention for the pounds, as the table of animal units names it
 * @param month - Convention for the days
 * @returns Pounds, lb per day on the basis that the table tells, and days
 * @throws RangeError if the tables have no such convention
 * @source nrph-2003, chapter 6 (26 lb, 30.4 days)
 * @example monthRule('handbook', 'twelfth') //=> { lbPerDay: 26, days: 30.4 }
 */
export function monthRule(
  day: (typeof animalUnitDay)[number]['convention'],
  month: (typeof monthDays)[number]['convention'],
): { readonly lbPerDay: number; readonly days: number } {
  const pounds = animalUnitDay.find(({ convention }) => convention === day);
  const length = monthDays.find(({ convention }) => convention === month);
  if (!pounds || !length) throw new RangeError(`monthRule needs two conventions of the tables, got ${day}, ${month}`);
  return { lbPerDay: pounds.lbPerDay, days: length.days };
}
