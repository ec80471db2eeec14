import { monthIndexOf } from '../../../calculators/units/days.ts';
import { monthNumber } from '../../../calculators/units/months.ts';
import type { Place } from '../model/place.ts';

/**
 * The day on which a rest is over, where only days of the months in which the place's grass grows count: dormant grass does not grow back (common
 * practice). Where the place does not tell its months, every day counts.
 */
export function restOverDay(outDay: number, restDays: number, { growth }: Pick<Place, 'growth'>): number {
  const { startMonth, quitMonth } = growth ?? {};
  if (startMonth === undefined || quitMonth === undefined) return outDay + restDays;
  const [start, quit] = [monthNumber(startMonth) - 1, monthNumber(quitMonth) - 1];
  // South of the equator the months of growth go over New Year.
  const grows = (month: number): boolean => (start <= quit ? month >= start && month <= quit : month >= start || month <= quit);
  let day = outDay;
  for (let left = restDays; left > 0; day += 1) if (grows(monthIndexOf(day))) left -= 1;
  return day;
}
