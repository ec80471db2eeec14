import { dayOf, printDay } from '../../../calculators/units/printQuantity.ts';
import type { Place } from '../model/place.ts';

/** A day as it stands in a record, in words; what is none stays as it is. */
export const dayWords = (iso: string): string => {
  const day = dayOf(iso);
  return day === undefined ? iso : printDay(day);
};
/** `High bench and Low bench` */
export const pastureNames = (place: Place, ids: readonly string[]): string =>
  new Intl.ListFormat('en-US').format(place.pastures.filter(({ id }) => ids.includes(id)).map(({ name }) => name));
