import { kept, placeKey } from '../../scripts/kept.ts';
import type { Place } from '../model/place.ts';
import { placeKind } from '../store/kinds.ts';
import { openStore } from '../store/openStore.ts';
import { rowKind } from '../store/rowKind.ts';
import type { Store } from '../store/store.ts';

const textStore = (): Storage | undefined => {
  try {
    return localStorage;
  } catch {
    return undefined;
  }
};
/** Which window writes, as another one tells it. */
export const writer = 'a calculator’s page';
/** The store, for what a form writes: fetched when somebody keeps something or throws something away. */
export const openHere = (): Promise<Store> => openStore({ by: writer, texts: textStore() });

/** The place that is open, as the store holds it now. */
export async function openPlaceIn(store: Store): Promise<Place | undefined> {
  const { records } = await store.read(placeKind);
  return records.find(({ id }) => id === kept('localStorage', placeKey));
}
/** With its record, in one transaction. */
export async function removePlace(id: string): Promise<void> {
  const store = await openHere();
  const { records } = await store.read(rowKind);
  const rows = records.filter(({ placeId }) => placeId === id);
  await store.remove(
    placeKind,
    id,
    rows.map((row) => ({ store: 'rows', id: row.id })),
  );
  store.close();
}
