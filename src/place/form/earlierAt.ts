// What earlier visits of the open place read with the form's own test. Fetched only by forms that ask for it.
import type { Calculator } from '../../../calculators/kit/define.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import { kept, visitKey } from '../../scripts/kept.ts';
import type { Place } from '../model/place.ts';
import type { Visit } from '../model/visit.ts';
import type { EarlierTest } from '../offer/offered.ts';
import { areOwnReadings } from '../visit/ownReadings.ts';
import { isSameSeason, readingsOf } from '../visit/readings.ts';
import { readResults, readVisits } from './readPlaces.ts';

/**
 * By the day that a form takes for today: tests of visits before it, and before the visit that the form was opened from, which somebody may write up
 * later. Left out: what holds figures of an example, what could not be judged, and what a form no longer takes.
 */
export async function earlierAt(calculator: Calculator, place: Place): Promise<(todayDay: number) => readonly EarlierTest[]> {
  const visits = await readVisits(place.id);
  const open = visits.find(({ id }) => id === kept('sessionStorage', visitKey));
  const made = visits.flatMap(({ day, results }) => results.filter(({ slug }) => slug === calculator.slug).map(({ id }) => ({ id, day })));
  const results = await readResults(made.map(({ id }) => id));
  const tests = results.flatMap((result) => {
    const { id, link, pastureIds } = result;
    const day = made.find((each) => each.id === id)?.day;
    const read = day === undefined || !(place.isDemo === true || areOwnReadings(calculator, result)) ? undefined : readingsOf(calculator, link);
    if (day === undefined || read === undefined || read.isUnsound) return [];
    return [{ day, pastureIds, readings: read.readings, tool: read.tool }];
  });
  return (todayDay) => {
    const before = dayOfForm(open, todayDay);
    return tests.filter(({ day }) => day < before).map((test) => ({ ...test, isOtherSeason: !isSameSeason(test.day, before) }));
  };
}
const dayOfForm = (open: Visit | undefined, todayDay: number): string => {
  const today = isoDay(todayDay);
  return open !== undefined && open.day < today ? open.day : today;
};
