import * as v from 'valibot';
import { amountSchema, between, idSchema, nameSchema, percentSchema, typedSchema } from './parts.ts';
import { conditions, covers, forages, grazings, stands, uses } from './words.ts';

const paddockSchema = v.strictObject({ id: idSchema, name: nameSchema, areaAc: v.optional(amountSchema), typed: typedSchema });

export const pastureSchema = v.strictObject({
  id: idSchema,
  name: nameSchema,
  areaAc: v.optional(amountSchema),
  soilId: v.optional(idSchema),
  use: v.optional(v.picklist(uses)),
  /** Whether its grass counts where the whole place is added up. */
  isCounted: v.boolean(),
  reachPercent: v.optional(percentSchema),
  waterDistanceMi: v.optional(between(0, 100)),
  slopePercent: v.optional(percentSchema),
  slopeLengthFt: v.optional(amountSchema),
  cover: v.optional(v.picklist(covers)),
  groundCoverPercent: v.optional(percentSchema),
  grazing: v.optional(v.picklist(grazings)),
  forage: v.optional(v.picklist(forages)),
  stand: v.optional(v.picklist(stands)),
  condition: v.optional(v.picklist(conditions)),
  densityLbPerAcIn: v.optional(amountSchema),
  startHeightIn: v.optional(between(0, 200)),
  stopHeightIn: v.optional(between(0, 200)),
  normalLbPerAc: v.optional(amountSchema),
  poorLbPerAc: v.optional(amountSchema),
  rootsMostIn: v.optional(between(0, 500)),
  rootsDeepestIn: v.optional(between(0, 500)),
  paddocks: v.pipe(v.array(paddockSchema), v.maxLength(200)),
  typed: typedSchema,
});
export type Pasture = v.InferOutput<typeof pastureSchema>;
