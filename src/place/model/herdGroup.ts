import * as v from 'valibot';
import { between, countSchema, daySchema, idSchema, monthDaySchema, nameSchema, typedSchema } from './parts.ts';
import { stages, stockKinds } from './words.ts';

export const herdGroupSchema = v.strictObject({
  id: idSchema,
  name: v.optional(nameSchema),
  kind: v.picklist(stockKinds),
  countHead: v.optional(countSchema),
  weightLb: v.optional(between(1, 5000)),
  /** What one eats a day, percent of its weight, where somebody knows better than the guides. */
  ownIntakePercent: v.optional(between(0.1, 20)),
  /** By which half are born. None where they give no birth. */
  birthsDay: v.optional(monthDaySchema),
  /** As somebody told it on a day, while nobody has told by when half are born. */
  told: v.optional(v.strictObject({ stage: v.picklist(stages), day: daySchema })),
  /** Which herd it goes with, where there are several. */
  herdNumber: v.optional(countSchema),
  typed: typedSchema,
});
export type HerdGroup = v.InferOutput<typeof herdGroupSchema>;
