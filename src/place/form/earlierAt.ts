// What earlier visits of the open place read with the form's own test. Fetched only by forms that ask for it.
import type { Calculator } from '../../../calculators/kit/define.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import { kept, visitKey } from '../../scripts/kept.ts';
import type { Place } from '../model/place.ts';
import type { Visit } from '../model/visit.ts';
import type { EarlierTest } from '../offer/offered.ts';
import { readResults, readVisits } from './readVisits.ts';

/**
 * By the day that a form takes for today: tests of visits before it, and before the visit that the form was opened from, which somebody may write up
 * later.
 */
export async function earlierAt(calculator: Calculator, place: Place): Promise<(todayDay: number) => readonly EarlierTest[]> {
  const visits = await readVisits(place.id);
  const open = visits.find(({ id }) => id === kept('sessionStorage', visitKey));
  const made = visits.flatMap(({ day, results }) => results.filter(({ slug }) => slug === calculator.slug).map(({ id }) => [id, day] as const));
  if (made.length === 0) return () => [];
  const [results, { earlierTests }] = await Promise.all([readResults(made.map(([id]) => id)), import('./earlierTests.ts')]);
  const dayOf = new Map(made);
  const before = earlierTests(calculator, place, results, (id) => dayOf.get(id));
  return (todayDay) => before(dayOfForm(open, todayDay));
}
const dayOfForm = (open: Visit | undefined, todayDay: number): string => {
  const today = isoDay(todayDay);
  return open !== undefined && open.day < today ? open.day : today;
};
