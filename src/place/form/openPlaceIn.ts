import { kept, placeKey } from '../../scripts/kept.ts';
import type { Place } from '../model/place.ts';
import { placeKind } from '../store/kinds.ts';
import type { Store } from '../store/store.ts';

/** The place that is open, as the store holds it now. */
export async function openPlaceIn(store: Store): Promise<Place | undefined> {
  const { records } = await store.read(placeKind);
  return records.find(({ id }) => id === kept('localStorage', placeKey));
}
