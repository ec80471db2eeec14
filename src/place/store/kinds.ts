import type { Place } from '../model/place.ts';
import { readPlace } from '../model/readRecord.ts';
import type { StoreName } from './backend.ts';
import type { Kind } from './kind.ts';
import type { Kept } from './records.ts';

export const placeKind: Kind<Place> = { store: 'places', read: readPlace };
/** Kinds by where they lie. All but places are fetched when one of them is read: most windows need none. */
const kinds: Readonly<Partial<Record<StoreName, () => Promise<Kind<Kept>>>>> = {
  places: async () => placeKind,
  rows: async () => (await import('./belongingKinds.ts')).rowKind,
  results: async () => (await import('./belongingKinds.ts')).resultKind,
  visits: async () => (await import('./belongingKinds.ts')).visitKind,
  notes: async () => (await import('./belongingKinds.ts')).noteKind,
  photos: async () => (await import('./belongingKinds.ts')).photoKind,
};
export const kindIn = async (store: StoreName): Promise<Kind<Kept> | undefined> => kinds[store]?.();
