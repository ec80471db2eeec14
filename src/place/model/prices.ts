import * as v from 'valibot';
import { daySchema, percentSchema, usdSchema } from './parts.ts';

export const pricesSchema = v.strictObject({
  seenDay: v.optional(daySchema),
  hayLowUsdPerTon: v.optional(usdSchema),
  hayLikelyUsdPerTon: v.optional(usdSchema),
  hayHighUsdPerTon: v.optional(usdSchema),
  freightUsdPerLoad: v.optional(usdSchema),
  calfEarlyUsdPerCwt: v.optional(usdSchema),
  calfUsualUsdPerCwt: v.optional(usdSchema),
  cowSaleUsd: v.optional(usdSchema),
  buyBackLowUsd: v.optional(usdSchema),
  buyBackLikelyUsd: v.optional(usdSchema),
  buyBackHighUsd: v.optional(usdSchema),
  interestPercent: v.optional(percentSchema),
});
export type Prices = v.InferOutput<typeof pricesSchema>;
