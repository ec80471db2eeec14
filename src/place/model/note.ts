import * as v from 'valibot';
import { daySchema, idSchema, nameSchema, recordEntries, wordsSchema } from './parts.ts';

/** Written into every note. */
export const noteVersion = 1;

/** What somebody did to one block of it. Blocks themselves are made from the visit, each time anew. */
const blockSchema = v.strictObject({
  /** `seen`, `result-<id>`. */
  id: v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{0,79}$/)),
  /** In place of the words that it comes with. */
  text: v.optional(wordsSchema),
  isLeftOut: v.optional(v.boolean()),
  /** Whether it goes into the office's copy, where that is not as usual. */
  isForOffice: v.optional(v.boolean()),
});

/** The follow-up note of a visit: it has the visit's id, so that two windows that begin it begin the same one. */
export const noteSchema = v.strictObject({
  ...recordEntries,
  v: v.literal(noteVersion),
  placeId: idSchema,
  blocks: v.pipe(v.array(blockSchema), v.maxLength(500)),
  /** Blocks in another order than they come in; what is not named keeps its place at the end. */
  order: v.optional(v.pipe(v.array(v.pipe(v.string(), v.maxLength(80))), v.maxLength(500))),
  /** What the office's copy calls the place. */
  placeCode: v.optional(nameSchema),
  /** The office's copy calls pastures by their names. */
  hasPastureNames: v.optional(v.boolean()),
  editedDay: daySchema,
});
export type Note = v.InferOutput<typeof noteSchema>;
