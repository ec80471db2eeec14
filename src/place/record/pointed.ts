import { monthIndexOf, sameDayIn, yearOf } from '../../../calculators/units/days.ts';
import type { Stay } from './stays.ts';

/** The shortest rest of a year, with the stay that ended it. A ground that never rested is none of it. */
export function shortestRest(stays: readonly Stay[], year: number): (Stay & { readonly restDays: number }) | undefined {
  const rested = stays.flatMap((stay) => (stay.restDays !== undefined && yearOf(stay.inDay) === year ? [{ ...stay, restDays: stay.restDays }] : []));
  return rested.toSorted((one, other) => one.restDays - other.restDays)[0];
}

/** Months in which spring grass starts, 0 for January: March to June (common practice). */
const isSpring = (day: number): boolean => monthIndexOf(day) >= 2 && monthIndexOf(day) <= 5;
/** The same week: three days either way. */
const weekDays = 3;

/** Grounds on which grazing began in the same week of this spring and the one before. */
export function sameWeek(stays: readonly Stay[], year: number): readonly { readonly now: Stay; readonly before: Stay }[] {
  const firstOfSpring = (of: number): ReadonlyMap<string, Stay> => {
    const first = new Map<string, Stay>();
    for (const stay of stays)
      if (yearOf(stay.inDay) === of && isSpring(stay.inDay) && !first.has(stay.move.paddockId)) first.set(stay.move.paddockId, stay);
    return first;
  };
  const [now, before] = [firstOfSpring(year), firstOfSpring(year - 1)];
  return [...now].flatMap(([id, stay]) => {
    const last = before.get(id);
    return last !== undefined && Math.abs(sameDayIn(last.inDay, year) - stay.inDay) <= weekDays ? [{ now: stay, before: last }] : [];
  });
}
