import * as v from 'valibot';
import type { Belongings } from '../model/belongings.ts';
import { fileVersion, fileWord, mostListed, placeFileSchema } from '../model/file.ts';
import type { Place } from '../model/place.ts';

interface WithId {
  readonly id: string;
}
const byId = (one: WithId, other: WithId): number => (one.id < other.id ? -1 : 1);

/**
 * Places and what is kept with them as the text of a file. The same content is the same bytes but for the day on which it was saved.
 * @param kept - As the store reads it: through its schemas, which put every field in its place. To do so again would take longer than all the rest.
 * @throws RangeError if there is more of a kind than a file may hold
 */
export function textOfPlaces(places: readonly Place[], edition: string, savedAt: string, kept: Partial<Belongings> = {}): string {
  const listed = <T extends WithId>(list: readonly T[] = []): readonly T[] | undefined => {
    if (list.length > mostListed) throw new RangeError(`a file holds at most ${mostListed} of a kind, got ${list.length}`);
    return list.length === 0 ? undefined : list.toSorted(byId);
  };
  const lists = { rows: listed(kept.rows), results: listed(kept.results), visits: listed(kept.visits), notes: listed(kept.notes) };
  // A place is in the order in which somebody filled it in.
  const head = v.parse(placeFileSchema, { file: fileWord, v: fileVersion, edition, savedAt, places });
  return `${JSON.stringify({ ...head, ...lists }, null, 1)}\n`;
}
