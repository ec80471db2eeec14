import * as v from 'valibot';
import { daySchema, idSchema, nameSchema, recordEntries, wordsSchema } from './parts.ts';

/** Written into every kept result. */
export const resultVersion = 1;

/** What a link may weigh; a form writes far shorter ones. */
const longestLink = 4000;
const listOf = <Each extends v.GenericSchema>(each: Each, most: number) => v.pipe(v.array(each), v.maxLength(most));

/** A calculation as it stood: the link that opens it, and the words and numbers that it gave that day. */
export const resultSchema = v.strictObject({
  ...recordEntries,
  v: v.literal(resultVersion),
  placeId: idSchema,
  visitId: idSchema,
  pastureIds: listOf(idSchema, 100),
  keptDay: daySchema,
  slug: idSchema,
  /** Of the calculator, when it was kept. */
  version: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(10_000)),
  /** Of these pages. */
  edition: nameSchema,
  title: nameSchema,
  /** Answers alone: neither a name nor a place is in it. */
  link: v.pipe(v.string(), v.maxLength(longestLink)),
  /** The line to take along, as it stood. */
  note: wordsSchema,
  /** Whose figures they were, where not all were the reader’s own: "Example, not your numbers". */
  stamp: v.optional(nameSchema),
  /** Figures in order, each with its range where it has one. */
  shown: listOf(v.strictObject({ label: nameSchema, text: wordsSchema, range: v.optional(wordsSchema) }), 200),
  cautions: listOf(v.strictObject({ lead: wordsSchema, say: wordsSchema, source: wordsSchema }), 100),
  /** What two managements were called, where two stood side by side. */
  sides: v.optional(v.tuple([nameSchema, nameSchema])),
  /** Works from published sources, as the page cites them. */
  sources: listOf(wordsSchema, 200),
  /** Days that it names: for a calendar. */
  days: listOf(v.strictObject({ day: daySchema, title: nameSchema, text: wordsSchema }), 200),
  /** A record went into it, which no link carries: the numbers here are all that is kept of it. */
  hasRecord: v.boolean(),
  /** Tells somebody to give up stock, so whom to call goes with it. */
  weighsOnPeople: v.boolean(),
});
export type Result = v.InferOutput<typeof resultSchema>;
