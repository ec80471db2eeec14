import { rowKind } from './rowKind.ts';
import type { Store } from './store.ts';
import { noteKind, photoKind, resultKind, visitKind } from './visitKinds.ts';

/** All that goes with a place when it is taken away: its record, its visits with their results, notes and photos. */
export async function belongingsOf(store: Store, placeId: string) {
  const idsOf = (records: readonly { readonly id: string; readonly placeId: string }[]): readonly string[] =>
    records.filter((each) => each.placeId === placeId).map(({ id }) => id);
  const [rows, visits, results, notes, photos] = await Promise.all([
    store.read(rowKind),
    store.read(visitKind),
    store.read(resultKind),
    store.read(noteKind),
    store.read(photoKind),
  ]);
  const lists = { rows: rows.records, visits: visits.records, results: results.records, notes: notes.records, photos: photos.records };
  return (['rows', 'visits', 'results', 'notes', 'photos'] as const).flatMap((each) => idsOf(lists[each]).map((id) => ({ store: each, id })));
}
