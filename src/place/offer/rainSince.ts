import { firstOfMonth, sameDayIn, yearOf } from '../../../calculators/units/days.ts';
import { type Month, monthNumber } from '../../../calculators/units/months.ts';
import { dayOf } from '../../../calculators/units/printQuantity.ts';
import type { Place } from '../model/place.ts';

/** What the form of dates to decide by has of its own while nobody tells it more: tests hold them together. */
const own = { sinceMonth: 'mar', endDay: '10-31', firstStepDays: 169 } as const;

/** The month from which rain is counted where growth runs over New Year: the one in which it starts. Elsewhere a form's own stands. */
export function rainSinceMonth({ growth: { startMonth, quitMonth } = {} }: Pick<Place, 'growth'>): Month | undefined {
  return startMonth !== undefined && quitMonth !== undefined && monthNumber(startMonth) > monthNumber(quitMonth) ? startMonth : undefined;
}

/** The day from which that form counts rain on a day: the last first of that month by the first date of the season that ends next. */
export function rainSinceDay(place: Pick<Place, 'growth' | 'season'>, todayDay: number): number {
  const built = dayOf(`2000-${place.season?.endDay ?? own.endDay}`);
  if (built === undefined) throw new RangeError(`no month and day: ${place.season?.endDay}`);
  const inYear = sameDayIn(built, yearOf(todayDay));
  const firstDay = (inYear >= todayDay ? inYear : sameDayIn(built, yearOf(todayDay) + 1)) - own.firstStepDays;
  const month = monthNumber(rainSinceMonth(place) ?? own.sinceMonth) - 1;
  const since = firstOfMonth(month, yearOf(firstDay));
  return since <= firstDay ? since : firstOfMonth(month, yearOf(firstDay) - 1);
}
