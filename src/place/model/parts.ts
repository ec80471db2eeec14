import * as v from 'valibot';
import { monthKeys } from '../../../calculators/units/months.ts';

// What every part of a place is made of. Each can be published as JSON Schema: no check here is a function.

/** The longest text that a file or a form may hold. */
export const longestWords = 20_000;
export const nameSchema = v.pipe(v.string(), v.minLength(1), v.maxLength(200));
export const wordsSchema = v.pipe(v.string(), v.maxLength(longestWords));
/** Never a name or a place: made at random. */
export const idSchema = v.pipe(v.string(), v.regex(/^[a-z0-9][a-z0-9-]{0,63}$/));
export const daySchema = v.pipe(v.string(), v.isoDate());
/** A day of a year that anything here can be of. Another is a slip of a key, or `0202` on the way to 2026. */
export const isUsualDay = (iso: string): boolean => /^(?:19|20|21)\d\d-/.test(iso);
/** A day of every year: `04-20`. */
export const monthDaySchema = v.pipe(
  v.string(),
  v.regex(/^(?:0[13578]|1[02])-(?:0[1-9]|[12]\d|3[01])$|^(?:0[469]|11)-(?:0[1-9]|[12]\d|30)$|^02-(?:0[1-9]|1\d|2[0-9])$/),
);
export const monthSchema = v.picklist(monthKeys());

/** Above nothing and below what no place has. */
export const between = (least: number, most: number) => v.pipe(v.number(), v.minValue(least), v.maxValue(most));
export const amountSchema = between(0, 1e9);
export const countSchema = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1e7));
export const percentSchema = between(0, 100);
export const usdSchema = between(0, 1e6);

/** The longest text that a field for one number or one name keeps. */
export const longestTyped = 1000;
/** What was typed, where it is to be shown again as it was: `areaAc: '16 ha'`. What cannot be read as a number stands here alone. */
export const typedSchema = v.optional(v.record(v.pipe(v.string(), v.maxLength(60)), v.pipe(v.string(), v.maxLength(longestTyped))));

/** Two changes of one field, made apart. Both stay until somebody picks. */
const clashSchema = v.strictObject({
  /** Where: `pastures/b2/areaAc`. */
  path: v.pipe(v.string(), v.maxLength(300)),
  /** As JSON, the one that is not in the record; nothing where that one took it away. */
  other: v.nullable(wordsSchema),
  otherBy: nameSchema,
  otherAt: v.pipe(v.string(), v.isoTimestamp()),
});
export type Clash = v.InferOutput<typeof clashSchema>;

export const mostPast = 200;

/** What every record has. Order of changes is told by `rev`, never by a clock. */
export const recordEntries = {
  id: idSchema,
  rev: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(1e9)),
  /** A mark for each revision, the last one its own, by which two copies tell whether one came of the other. The oldest drop off. */
  past: v.pipe(v.array(v.pipe(v.string(), v.regex(/^\d{1,10}-[a-z0-9]{6}$/))), v.minLength(1), v.maxLength(mostPast)),
  /** Which window or device: words that a person would know again. */
  changedBy: nameSchema,
  changedAt: v.pipe(v.string(), v.isoTimestamp()),
  clash: v.optional(v.pipe(v.array(clashSchema), v.maxLength(1000))),
};
