import * as v from 'valibot';
import type { Belongings } from '../model/belongings.ts';
import { fileVersion, fileWord, placeFileSchema } from '../model/file.ts';
import type { Place } from '../model/place.ts';

interface WithId {
  readonly id: string;
}
const byId = (one: WithId, other: WithId): number => (one.id < other.id ? -1 : 1);

/** Places and what is kept with them as the text of a file. The same content is the same bytes but for the day on which it was saved. */
export function textOfPlaces(places: readonly Place[], edition: string, savedAt: string, kept: Partial<Belongings> = {}): string {
  // Read through the schema once more: it puts every field in its place.
  const listed = <T extends WithId>(list: readonly T[] | undefined): T[] | undefined =>
    list === undefined || list.length === 0 ? undefined : list.toSorted(byId);
  const lists = { rows: listed(kept.rows), results: listed(kept.results), visits: listed(kept.visits), notes: listed(kept.notes) };
  const file = v.parse(placeFileSchema, { file: fileWord, v: fileVersion, edition, savedAt, places, ...lists });
  return `${JSON.stringify(file, null, 1)}\n`;
}

/** What cannot be opened here goes out as it is, for who can. */
export const textOfRaw = (raw: unknown): string => `${JSON.stringify(raw, null, 1)}\n`;

/** `holdwater-two-bench-place-2026-06-20.json` */
export function nameOfFile(placeName: string, isoDay: string, ending = 'json'): string {
  const plain = placeName
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 40);
  return `holdwater-${plain === '' ? 'place' : plain}-${isoDay}.${ending}`;
}
