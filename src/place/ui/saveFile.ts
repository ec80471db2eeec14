import { localDay } from '../../../calculators/units/days.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import { nameOfFile, textOfPlaces } from '../files/save.ts';
import type { Place } from '../model/place.ts';
import { download } from './download.ts';
import type { View } from './view.ts';

const today = ({ session }: View): string => isoDay(localDay(session.now));

/** Saves what stands in this window: what the store had no room for is in the file too. */
export async function saveFile(view: View, places: readonly Place[]): Promise<void> {
  const { session, edition } = view;
  const [first] = places;
  if (first === undefined) return;
  const name = places.length === 1 ? first.name : 'places';
  download(nameOfFile(name, today(view)), textOfPlaces(places, edition, session.now.toISOString(), await session.rowsOf(places)));
  for (const place of places) session.backups.saved(place, session.now);
}
