import { localDay } from '../../../calculators/units/days.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import { nameOfFile, textOfPlaces } from '../files/save.ts';
import type { Place } from '../model/place.ts';
import { download } from './download.ts';
import type { View } from './view.ts';

export const today = ({ session }: View): string => isoDay(localDay(session.now));

/** Saves what stands in this window: what the store had no room for is in the file too. */
export async function saveFile(view: View, places: readonly Place[]): Promise<void> {
  const { session, edition } = view;
  const [first] = places;
  if (first === undefined) return;
  const name = places.length === 1 ? first.name : 'places';
  const [text, photos] = [
    textOfPlaces(places, edition, session.now.toISOString(), await session.belongingsOf(places)),
    await session.photosOf(places),
  ];
  if (photos.length === 0) download(nameOfFile(name, today(view)), text);
  else {
    const { zipOf } = await import('../files/zip.ts');
    download(nameOfFile(name, today(view), 'zip'), zipOf(text, photos), 'application/zip');
  }
  for (const place of places) session.backups.saved(place, session.now);
}
