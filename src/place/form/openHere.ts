import { kept, placeKey } from '../../scripts/kept.ts';
import { type Place, placeVersion } from '../model/place.ts';
import type { Key } from '../store/backend.ts';
import type { Kind } from '../store/kind.ts';
import { placeKind } from '../store/kinds.ts';
import { openStore } from '../store/openStore.ts';
import { type Kept, newId, randomMark } from '../store/records.ts';
import { rowKind } from '../store/rowKind.ts';
import type { Store } from '../store/store.ts';
import { noteKind, photoKind, resultKind, visitKind } from '../store/visitKinds.ts';
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
/** With its record, in one transaction. */
export async function removePlace(id: string): Promise<void> {
  const store = await openHere();
  const kinds = [rowKind, visitKind, resultKind, noteKind, photoKind];
  const of = async (kind: Kind<Kept & { readonly placeId: string }>): Promise<readonly Key[]> =>
    (await store.read(kind)).records.filter(({ placeId }) => placeId === id).map((each) => ({ store: kind.store, id: each.id }));
  await store.remove(placeKind, id, (await Promise.all(kinds.map(of))).flat());
  store.close();
}
