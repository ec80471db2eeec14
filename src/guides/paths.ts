import * as v from 'valibot';
import { monthName } from '../../calculators/units/months.ts';
import data from '../../content/paths.json' with { type: 'json' };

const pathSchema = {
  id: v.pipe(v.string(), v.regex(/^[a-z]+(?:-[a-z]+)*$/)),
  title: v.string(),
  says: v.string(),
  /** Slugs, in the order in which to read. A guide that is not there yet is left out. */
  guides: v.pipe(v.array(v.string()), v.minLength(2)),
};
const monthSchema = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(12));
const pathsSchema = v.strictObject({
  readers: v.array(
    v.strictObject({
      ...pathSchema,
      /** Slug of the calculator whose question is asked before anything is read. */
      asksFirst: v.optional(v.string()),
    }),
  ),
  /** Times of the grass, not of the calendar. */
  seasons: v.array(v.strictObject({ ...pathSchema, northMonths: v.pipe(v.array(monthSchema), v.minLength(1)) })),
});

/** Ways through the guides, by reader and by time of year. */
export const paths = v.parse(pathsSchema, data);

/** `March and April`, `November to February`; six months later where spring comes in September. */
export function sayMonths(northMonths: readonly number[], spring: 'march' | 'september'): string {
  const names = northMonths.map((month) => monthName((month - 1 + (spring === 'march' ? 0 : 6)) % 12));
  const [first = '', ...others] = names;
  return others.length === 0 ? first : `${first} ${names.length === 2 ? 'and' : 'to'} ${others.at(-1)}`;
}
