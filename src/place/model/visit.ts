import * as v from 'valibot';
import { amountSchema, between, daySchema, idSchema, nameSchema, recordEntries, typedSchema, wordsSchema } from './parts.ts';

/** Written into every visit. */
export const visitVersion = 1;

/** How wet the ground felt in the hand, in the words of the ring test. */
export const moistureFeels = ['dry', 'moist', 'wet'] as const;

/** One thing that was agreed. */
const stepSchema = v.strictObject({
  id: idSchema,
  what: v.optional(wordsSchema),
  who: v.optional(nameSchema),
  byDay: v.optional(daySchema),
  isDone: v.optional(v.boolean()),
  typed: typedSchema,
});
export type Step = v.InferOutput<typeof stepSchema>;

/** A calculation that was kept in it: enough for a list of visits, which reads no results. */
const keptSchema = v.strictObject({ id: idSchema, slug: idSchema, title: nameSchema });

/** A day on the ground with somebody: what was seen and said, what was worked out, what was agreed. */
export const visitSchema = v.strictObject({
  ...recordEntries,
  v: v.literal(visitVersion),
  placeId: idSchema,
  day: daySchema,
  /** Who writes it. */
  by: v.optional(nameSchema),
  /** Who was there, with commas between. */
  present: v.optional(wordsSchema),
  pastureIds: v.pipe(v.array(idSchema), v.maxLength(100)),
  ground: v.optional(
    v.strictObject({
      moistureFeel: v.optional(v.picklist(moistureFeels)),
      daysSinceRain: v.optional(between(0, 1000)),
      fiveDayRainIn: v.optional(amountSchema),
      isFrozen: v.optional(v.boolean()),
    }),
  ),
  /** Where, in words: "third post from the gate". Never coordinates. */
  spots: v.optional(wordsSchema),
  photos: v.optional(v.pipe(v.array(v.strictObject({ id: idSchema, words: v.optional(wordsSchema) })), v.maxLength(12))),
  seen: v.optional(wordsSchema),
  said: v.optional(wordsSchema),
  steps: v.pipe(v.array(stepSchema), v.maxLength(100)),
  nextDay: v.optional(daySchema),
  /** Things with ids, so that two windows can each keep one at once. */
  results: v.pipe(v.array(keptSchema), v.maxLength(200)),
  typed: typedSchema,
});
export type Visit = v.InferOutput<typeof visitSchema>;
