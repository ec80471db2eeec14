import * as v from 'valibot';
import { noteSchema } from './note.ts';
import { nameSchema } from './parts.ts';
import { placeSchema } from './place.ts';
import { resultSchema } from './result.ts';
import { rowSchema } from './row.ts';
import { visitSchema } from './visit.ts';

/** The word by which a file is known as one of ours. */
export const fileWord = 'holdwater-place';
export const fileVersion = 1;

/** So many of each kind. */
export const mostListed = 50_000;

/** A file that somebody saved: everything of the places in it. Keys stand in this order, so that the same content is the same bytes. */
export const placeFileSchema = v.strictObject({
  file: v.literal(fileWord),
  v: v.literal(fileVersion),
  /** Which edition of the pages wrote it. */
  edition: nameSchema,
  savedAt: v.pipe(v.string(), v.isoTimestamp()),
  places: v.pipe(v.array(placeSchema), v.maxLength(1000)),
  /** Their record of grazing and rain. Left out where there is none. */
  rows: v.optional(v.pipe(v.array(rowSchema), v.maxLength(mostListed))),
  /** Calculations that were kept, the visits that they belong to, and the notes of those. */
  results: v.optional(v.pipe(v.array(resultSchema), v.maxLength(mostListed))),
  visits: v.optional(v.pipe(v.array(visitSchema), v.maxLength(mostListed))),
  notes: v.optional(v.pipe(v.array(noteSchema), v.maxLength(mostListed))),
});
export type PlaceFile = v.InferOutput<typeof placeFileSchema>;
