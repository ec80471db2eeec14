import * as v from 'valibot';
import { countrySchema, daySchema } from '../../../content/local/schema.ts';

/** Letters that an office file may have. */
export const mostLetters = 512 * 1024;
export const longestWords = 2000;
export const longestList = 200;
export const deepest = 12;

const wordsSchema = v.pipe(v.string(), v.minLength(1));
/** Where a copy is, so that links can lead there: nothing but an address of the web. */
const webSchema = v.pipe(v.string(), v.regex(/^https?:\/\/[^\s"'<>\\]+$/));

const { name: _, where, talkToSomeone, ...sections } = countrySchema.entries;

/** One more kind of country, with the office that answers for it. What it does not give stands as nobody's. */
export const officeSchema = v.strictObject({
  file: v.literal('holdwater-office'),
  v: v.literal(1),
  head: v.strictObject({
    name: wordsSchema,
    /** What it serves: its counties, its kind of ground. */
    where: v.optional(where),
    address: v.optional(wordsSchema),
    phone: v.optional(v.pipe(v.string(), v.regex(/\d[\d-]*\d(?![\d-])/))),
    copyAt: v.optional(webSchema),
    valuesDay: daySchema,
    /** Kind of country whose values it began with. */
    startedFrom: v.optional(wordsSchema),
  }),
  values: v.strictObject({ ...v.partial(v.strictObject(sections)).entries, talkToSomeone }),
  words: v.optional(v.strictObject({ ground: v.optional(v.picklist(['paddock', 'pasture', 'trap'])) })),
  cautions: v.optional(v.array(v.strictObject({ says: wordsSchema, source: wordsSchema }))),
});
export type Office = v.InferOutput<typeof officeSchema>;
