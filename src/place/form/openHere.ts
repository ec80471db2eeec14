import { kept, placeKey } from '../../scripts/kept.ts';
import { placeVersion } from '../model/migrations/place.ts';
import type { Place } from '../model/place.ts';
import { newId, randomMark } from '../store/ids.ts';
import { placeKind } from '../store/kinds.ts';
import { openStore } from '../store/openStore.ts';
import type { Store } from '../store/store.ts';
import type { Begun } from '../visit/newVisit.ts';

const textStore = (): Storage | undefined => {
  try {
    return localStorage;
  } catch {
    return undefined;
  }
};
/** Which window writes, as another one tells it. */
const writer = 'a calculator’s page';
/** A new record’s head. */
export const begin = (): Begun => ({ id: newId(), rev: 1, past: [`1-${randomMark()}`], changedBy: writer, changedAt: new Date().toISOString() });
export const blankPlace = (): Place => ({ ...begin(), v: placeVersion, name: '?', soils: [], pastures: [], herd: [], water: [] });
/** The store, for what a form writes: fetched when somebody keeps something or throws something away. */
export const openHere = (): Promise<Store> => openStore({ by: writer, texts: textStore() });

/** The place that is open, as the store holds it now. */
export async function openPlaceIn(store: Store): Promise<Place | undefined> {
  const { records } = await store.read(placeKind);
  return records.find(({ id }) => id === kept('localStorage', placeKey));
}
/** With all that belongs to it, in one transaction. */
export async function removePlace(id: string): Promise<void> {
  const [store, { belongingsOf }] = await Promise.all([openHere(), import('../store/belongings.ts')]);
  await store.remove(placeKind, id, await belongingsOf(store, id));
  store.close();
}
