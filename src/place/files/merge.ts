import type { Place } from '../model/place.ts';
import type { Saved } from '../store/decide.ts';
import { placeKind } from '../store/kinds.ts';
import type { Kept } from '../store/records.ts';
import { rowKind } from '../store/rowKind.ts';
import type { Store } from '../store/store.ts';
import { noteKind, photoKind, resultKind, visitKind } from '../store/visitKinds.ts';
import { type Pictures, photosIn } from './pictures.ts';
import type { Coming } from './preview.ts';

export interface Picked {
  readonly coming: Coming;
  /** Its namesake here is this place: the two are joined. */
  readonly isNamesake?: boolean;
}
const asPicked = ({ coming: { place, namesake }, isNamesake }: Picked): Place =>
  isNamesake === true && namesake !== undefined ? { ...place, id: namesake.id } : place;
const asNew = <T>(after: T): { readonly before: null; readonly after: T } => ({ before: null, after });

/** Brings in what was ticked, places and what is kept with them in one transaction. What is here is compared again at that moment: another window may have changed it since the preview. */
export const bringIn = (store: Store, picked: readonly Picked[], pictures: Pictures = new Map()): Promise<readonly Saved<Kept>[]> => {
  const edits = <T extends { readonly placeId: string }>(list: (coming: Coming) => readonly T[]) =>
    picked.flatMap((each) => list(each.coming).map((record) => asNew({ ...record, placeId: asPicked(each).id })));
  return store.saveAll([
    { kind: placeKind, edits: picked.map((each) => asNew(asPicked(each))) },
    { kind: rowKind, edits: edits(({ rows }) => rows) },
    { kind: visitKind, edits: edits(({ visits }) => visits) },
    { kind: resultKind, edits: edits(({ results }) => results) },
    { kind: noteKind, edits: edits(({ notes }) => notes) },
    { kind: photoKind, edits: edits(({ visits }) => photosIn(pictures, visits)) },
  ]);
};
