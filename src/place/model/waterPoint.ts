import * as v from 'valibot';
import { amountSchema, between, countSchema, daySchema, idSchema, nameSchema, typedSchema } from './parts.ts';
import { supplies, tankShapes } from './words.ts';

const tanksSchema = v.strictObject({
  shape: v.optional(v.picklist(tankShapes)),
  count: v.optional(countSchema),
  acrossFt: v.optional(amountSchema),
  lengthFt: v.optional(amountSchema),
  widthFt: v.optional(amountSchema),
  depthFt: v.optional(amountSchema),
});
/** What a laboratory wrote, and when: an old slip is offered with its day. */
const slipSchema = v.strictObject({
  day: v.optional(daySchema),
  sulfateMgPerL: v.optional(amountSchema),
  saltMgPerL: v.optional(amountSchema),
  nitrateMgPerL: v.optional(amountSchema),
});

export const waterPointSchema = v.strictObject({
  id: idSchema,
  name: nameSchema,
  supply: v.optional(v.picklist(supplies)),
  lengthFt: v.optional(amountSchema),
  widthFt: v.optional(amountSchema),
  surfaceAc: v.optional(amountSchema),
  shoreFt: v.optional(amountSchema),
  maxDepthFt: v.optional(amountSchema),
  deadDepthFt: v.optional(amountSchema),
  evaporationInPerDay: v.optional(between(0, 10)),
  seepageInPerDay: v.optional(between(0, 10)),
  flowGpm: v.optional(amountSchema),
  tanks: v.optional(tanksSchema),
  slip: v.optional(slipSchema),
  typed: typedSchema,
});
export type WaterPoint = v.InferOutput<typeof waterPointSchema>;
