import type { Place } from '../model/place.ts';
import type { Saved } from '../store/decide.ts';
import { placeKind } from '../store/kinds.ts';
import type { Kept } from '../store/records.ts';
import { rowKind } from '../store/rowKind.ts';
import type { Store } from '../store/store.ts';
import type { Coming } from './preview.ts';

export interface Picked {
  readonly coming: Coming;
  /** Its namesake here is this place: the two are joined. */
  readonly isNamesake?: boolean;
}
const asPicked = ({ coming: { place, namesake }, isNamesake }: Picked): Place =>
  isNamesake === true && namesake !== undefined ? { ...place, id: namesake.id } : place;
const asNew = <T>(after: T): { readonly before: null; readonly after: T } => ({ before: null, after });

/** Brings in what was ticked, places and records in one transaction. What is here is compared again at that moment: another window may have changed it since the preview. */
export const bringIn = (store: Store, picked: readonly Picked[]): Promise<readonly Saved<Kept>[]> =>
  store.saveAll([
    { kind: placeKind, edits: picked.map((each) => asNew(asPicked(each))) },
    { kind: rowKind, edits: picked.flatMap((each) => each.coming.rows.map((row) => asNew({ ...row, placeId: asPicked(each).id }))) },
  ]);
