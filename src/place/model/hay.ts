import * as v from 'valibot';
import { amountSchema, countSchema, daySchema, idSchema, nameSchema, percentSchema, typedSchema } from './parts.ts';
import { feeders, storages } from './words.ts';

const stackSchema = v.strictObject({
  id: idSchema,
  name: v.optional(nameSchema),
  baleCount: v.optional(countSchema),
  /** What the record has fed after it is no longer in the count. */
  countedDay: v.optional(daySchema),
  baleLb: v.optional(amountSchema),
  /** Whether that weight is of the day of baling, or what a bale weighs now. */
  weighedAt: v.optional(v.picklist(['baling', 'now'])),
  weighedDay: v.optional(daySchema),
  moisturePercent: v.optional(percentSchema),
  baledDay: v.optional(daySchema),
  storedAs: v.optional(v.picklist(storages)),
  typed: typedSchema,
});
export type HayStack = v.InferOutput<typeof stackSchema>;

export const haySchema = v.strictObject({
  stacks: v.pipe(v.array(stackSchema), v.maxLength(200)),
  /** Hay that they buy: as it usually comes, and where they put it. */
  bought: v.optional(
    v.strictObject({
      baleLb: v.optional(amountSchema),
      storedAs: v.optional(v.picklist(storages)),
      moisturePercent: v.optional(percentSchema),
      loadCount: v.optional(countSchema),
    }),
  ),
  feeder: v.optional(v.picklist(feeders)),
});
export type Hay = v.InferOutput<typeof haySchema>;
