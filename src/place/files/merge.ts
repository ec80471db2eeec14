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
  /** Of a namesake: pastures and herds of one name stand beside each other all the same. */
  readonly isApart?: boolean;
}
const noIds: ReadonlyMap<string, string> = new Map();
const idsOf = ({ coming: { place, namesake }, isNamesake, isApart }: Picked): ReadonlyMap<string, string> =>
  isNamesake !== true || namesake === undefined || isApart === true ? noIds : sameNames(namesake, place).ids;
const asPicked = (picked: Picked): Place => {
  const { place, namesake } = picked.coming;
  return picked.isNamesake === true && namesake !== undefined ? { ...withIds(place, idsOf(picked)), id: namesake.id } : place;
};
/** What a place will be once its namesake of a file is joined with it; nothing where none is. */
export function joinedOf(picked: Picked): Place | undefined {
  const { namesake } = picked.coming;
  if (namesake === undefined) return undefined;
  const read = placeKind.read(joinCopies(namesake, asPicked(picked), { by: namesake.changedBy, now: () => new Date(), mark: () => 'aaaaaa' }));
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
