import type { Place } from '../model/place.ts';
import { type Read, readPlace } from '../model/readRecord.ts';
import type { StoreName } from './backend.ts';
import type { Kept } from './records.ts';

/** A kind of record: where it lies, and how it is read whatever edition wrote it. */
export interface Kind<T extends Kept> {
  readonly store: StoreName;
  readonly read: (raw: unknown) => Read<T>;
}
export const placeKind: Kind<Place> = { store: 'places', read: readPlace };
const kinds: readonly Kind<Kept>[] = [placeKind];
export const kindIn = (store: StoreName): Kind<Kept> | undefined => kinds.find((each) => each.store === store);
