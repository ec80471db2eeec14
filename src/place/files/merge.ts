import type { Place } from '../model/place.ts';
import type { Saved } from '../store/decide.ts';
import { placeKind } from '../store/kinds.ts';
import { joinCopies, type Kept } from '../store/records.ts';
import { rowKind } from '../store/rowKind.ts';
import type { Store } from '../store/store.ts';
import { noteKind, photoKind, resultKind, visitKind } from '../store/visitKinds.ts';
import { type Pictures, photosIn } from './pictures.ts';
import type { Coming } from './preview.ts';
import { sameNames, withIds } from './sameNames.ts';

export interface Picked {
  readonly coming: Coming;
  /** Its namesake here is this place: the two are joined. */
  readonly isNamesake?: boolean;
  /** Pastures and herds of one name stand beside each other all the same. */
  readonly isApart?: boolean;
}
/** Ours with which a coming place is joined: its namesake, or the one that it went apart from. */
export const oursOf = ({ coming: { namesake, apart }, isNamesake }: Picked): Place | undefined => (isNamesake === true ? namesake : apart);
const noIds: ReadonlyMap<string, string> = new Map();
const idsOf = (picked: Picked): ReadonlyMap<string, string> => {
  const ours = oursOf(picked);
  return ours === undefined || picked.isApart === true ? noIds : sameNames(ours, picked.coming.place).ids;
};
const asPicked = (picked: Picked): Place => {
  const { place } = picked.coming;
  const ours = oursOf(picked);
  return ours === undefined ? place : { ...withIds(place, idsOf(picked)), id: ours.id };
};
/** What a place will be once one of a file is joined with it; nothing where none is. */
export function joinedOf(picked: Picked): Place | undefined {
  const ours = oursOf(picked);
  if (ours === undefined) return undefined;
  const read = placeKind.read(joinCopies(ours, asPicked(picked), { by: ours.changedBy, now: () => new Date(), mark: () => 'aaaaaa' }));
  return read.is === 'read' ? read.value : undefined;
}
const asNew = <T>(after: T): { readonly before: null; readonly after: T } => ({ before: null, after });

/** Brings in what was ticked, places and what is kept with them in one transaction. What is here is compared again at that moment: another window may have changed it since the preview. */
export const bringIn = (store: Store, picked: readonly Picked[], pictures: Pictures = new Map()): Promise<readonly Saved<Kept>[]> => {
  const edits = <T extends { readonly placeId: string }>(list: (coming: Coming) => readonly T[], isPlain = true) =>
    picked.flatMap((each) => {
      const [ids, { id: placeId }] = [idsOf(each), asPicked(each)];
      return list(each.coming).map((record) => asNew({ ...(isPlain ? withIds(record, ids) : record), placeId }));
    });
  return store.saveAll([
    { kind: placeKind, edits: picked.map((each) => asNew(asPicked(each))) },
    { kind: rowKind, edits: edits(({ rows }) => rows) },
    { kind: visitKind, edits: edits(({ visits }) => visits) },
    { kind: resultKind, edits: edits(({ results }) => results) },
    { kind: noteKind, edits: edits(({ notes }) => notes) },
    { kind: photoKind, edits: edits(({ visits }) => photosIn(pictures, visits), false) },
  ]);
};
