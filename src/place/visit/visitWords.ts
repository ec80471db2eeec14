import { dayOf, printDay } from '../../../calculators/units/printQuantity.ts';
import type { Place } from '../model/place.ts';
import type { Visit } from '../model/visit.ts';

/** A day as it stands in a record, in words; what is none stays as it is. */
export const dayWords = (iso: string): string => {
  const day = dayOf(iso);
  return day === undefined ? iso : printDay(day);
};
/** The day of a visit, and which it is where several are of one day: `Nov 30, 2026 (2 of 2)`. */
export function visitDay(visit: Visit, visits: readonly Visit[]): string {
  const ofDay = visits
    .filter(({ day }) => day === visit.day)
    .map(({ id }) => id)
    .toSorted();
  return ofDay.length > 1 ? `${dayWords(visit.day)} (${ofDay.indexOf(visit.id) + 1} of ${ofDay.length})` : dayWords(visit.day);
}
/** `High bench and Low bench`; what was taken away since comes last, by the name that it had. */
export function pastureNames({ pastures, pasturesTakenAway = [] }: Place, ids: readonly string[]): string {
  const all = [...pastures, ...pasturesTakenAway.filter((gone) => pastures.every(({ id }) => id !== gone.id))];
  return new Intl.ListFormat('en-US').format(all.filter(({ id }) => ids.includes(id)).map(({ name }) => name));
}
/** `Nov 30, 2026 (2 of 2), High bench`: what tells a visit from the others of its place. */
export function visitTold(place: Place | undefined, visit: Visit, visits: readonly Visit[]): string {
  const names = place === undefined ? '' : pastureNames(place, visit.pastureIds);
  return `${visitDay(visit, visits)}${names === '' ? '' : `, ${names}`}`;
}
