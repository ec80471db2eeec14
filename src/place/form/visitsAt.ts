// What visits of the open place tell a form: the one that it was opened from, and what earlier ones read with its own test. Fetched only by forms that ask for it.
import type { Calculator } from '../../../calculators/kit/define.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import { kept, visitKey } from '../../scripts/kept.ts';
import type { Place } from '../model/place.ts';
import type { Visit } from '../model/visit.ts';
import type { EarlierTest, Standing } from '../offer/offered.ts';
import { readResults, readVisits } from './readVisits.ts';

/**
 * By the day that a form takes for today: the visit that the form was opened from, which somebody may write up later, and tests of visits before it.
 */
export async function visitsAt(calculator: Calculator, place: Place): Promise<(todayDay: number) => Pick<Standing, 'visit' | 'earlier'>> {
  const visits = await readVisits(place.id);
  const open = visits.find(({ id }) => id === kept('sessionStorage', visitKey));
  const made = visits.flatMap(({ day, results }) => results.filter(({ slug }) => slug === calculator.slug).map(({ id }) => [id, day] as const));
  const before = made.length === 0 ? (): readonly EarlierTest[] => [] : await testsOf(calculator, place, new Map(made));
  return (todayDay) => {
    const day = dayOfForm(open, todayDay);
    return { visit: open !== undefined && open.day <= day ? open : undefined, earlier: before(day) };
  };
}
async function testsOf(calculator: Calculator, place: Place, dayOf: ReadonlyMap<string, string>): Promise<(day: string) => readonly EarlierTest[]> {
  const [results, { earlierTests }] = await Promise.all([readResults([...dayOf.keys()]), import('./earlierTests.ts')]);
  return earlierTests(calculator, place, results, (id) => dayOf.get(id));
}
const dayOfForm = (open: Visit | undefined, todayDay: number): string => {
  const today = isoDay(todayDay);
  return open !== undefined && open.day < today ? open.day : today;
};
