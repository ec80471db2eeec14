import * as v from 'valibot';
import { fileVersion, fileWord, placeFileSchema } from '../model/file.ts';
import type { Place } from '../model/place.ts';
import type { Row } from '../model/row.ts';

const byId = (one: Row, other: Row): number => (one.id < other.id ? -1 : 1);

/** Places and their record as the text of a file. The same content is the same bytes but for the day on which it was saved. */
export function textOfPlaces(places: readonly Place[], edition: string, savedAt: string, rows: readonly Row[] = []): string {
  // Read through the schema once more: it puts every field in its place.
  const recorded = rows.length === 0 ? {} : { rows: rows.toSorted(byId) };
  const file = v.parse(placeFileSchema, { file: fileWord, v: fileVersion, edition, savedAt, places, ...recorded });
  return `${JSON.stringify(file, null, 1)}\n`;
}

/** `holdwater-two-bench-place-2026-06-20.json` */
export function nameOfFile(placeName: string, isoDay: string): string {
  const plain = placeName
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 40);
  return `holdwater-${plain === '' ? 'place' : plain}-${isoDay}.json`;
}
