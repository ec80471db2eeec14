import * as v from 'valibot';
import { amountSchema, between, countSchema, daySchema, idSchema, nameSchema, recordEntries, typedSchema, wordsSchema } from './parts.ts';
import { stockKinds } from './words.ts';

/** Written into every row of the record. */
export const rowVersion = 1;

const ofRow = { ...recordEntries, v: v.literal(rowVersion), placeId: idSchema, typed: typedSchema } as const;
/** Where: a paddock by its id, or a pasture that has none; and its name then, by which it is told should it be taken away. */
const ofPaddock = { paddockId: idSchema, paddockName: v.optional(nameSchema) } as const;
const heightSchema = between(0, 200);
const herdNumberSchema = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(50));

/** Copied from the herd as it was that day: what changes in the herd later changes no past. */
const stockLineSchema = v.strictObject({
  kind: v.picklist(stockKinds),
  countHead: countSchema,
  weightLb: v.optional(between(1, 5000)),
  /** What one of them eats in a day, the water out. */
  lbPerDay: v.optional(amountSchema),
  typed: typedSchema,
});
export type StockLine = v.InferOutput<typeof stockLineSchema>;

const moveSchema = v.strictObject({
  is: v.literal('move'),
  ...ofRow,
  ...ofPaddock,
  herdNumber: herdNumberSchema,
  inDay: daySchema,
  /** None while they are there. */
  outDay: v.optional(daySchema),
  stock: v.pipe(v.array(stockLineSchema), v.maxLength(20)),
  heightInIn: v.optional(heightSchema),
  heightOutIn: v.optional(heightSchema),
  word: v.optional(wordsSchema),
});
const heightRowSchema = v.strictObject({ is: v.literal('height'), ...ofRow, ...ofPaddock, day: daySchema, heightIn: heightSchema });
/** Hay that was fed there; what a bale weighs is copied, the water in it too. */
const hayRowSchema = v.strictObject({
  is: v.literal('hay'),
  ...ofRow,
  ...ofPaddock,
  day: daySchema,
  baleCount: amountSchema,
  baleLb: v.optional(amountSchema),
  moisturePercent: v.optional(between(0, 100)),
});
/** A reading of the gauge: of that day, or of several days up to it. */
const rainRowSchema = v.strictObject({
  is: v.literal('rain'),
  ...ofRow,
  day: daySchema,
  days: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(366)),
  amountIn: between(0, 100),
  /** Too little to measure. */
  isTrace: v.optional(v.boolean()),
});
const planSchema = v.strictObject({
  is: v.literal('plan'),
  ...ofRow,
  ...ofPaddock,
  herdNumber: herdNumberSchema,
  inDay: daySchema,
  outDay: daySchema,
  lookDay: v.optional(daySchema),
});

/** One line of the record of grazing and rain. */
export const rowSchema = v.variant('is', [moveSchema, heightRowSchema, hayRowSchema, rainRowSchema, planSchema]);
export type Row = v.InferOutput<typeof rowSchema>;
export type MoveRow = v.InferOutput<typeof moveSchema>;
export type HeightRow = v.InferOutput<typeof heightRowSchema>;
export type HayRow = v.InferOutput<typeof hayRowSchema>;
export type RainRow = v.InferOutput<typeof rainRowSchema>;
export type PlanRow = v.InferOutput<typeof planSchema>;
