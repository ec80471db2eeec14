import * as v from 'valibot';
import { amountSchema, between, idSchema, nameSchema, percentSchema, typedSchema } from './parts.ts';
import { soilGroups, textures } from './words.ts';

const layerSchema = v.strictObject({
  id: v.optional(idSchema),
  thicknessIn: v.optional(between(0.1, 200)),
  texture: v.optional(v.picklist(textures)),
  /** Available water, inches in an inch of soil, as the survey prints it. */
  surveyInPerIn: v.optional(between(0.01, 1)),
  stonesPercent: v.optional(percentSchema),
  typed: typedSchema,
});

export const soilSchema = v.strictObject({
  id: idSchema,
  name: nameSchema,
  /** Of the plow layer, in the words of the ribbon test. */
  texture: v.optional(v.picklist(textures)),
  soilGroup: v.optional(v.picklist(soilGroups)),
  organicMatterPercent: v.optional(percentSchema),
  /** To what stops roots and water, or to where digging stopped. */
  depthIn: v.optional(amountSchema),
  layers: v.optional(v.pipe(v.array(layerSchema), v.maxLength(20))),
  typed: typedSchema,
});
export type Soil = v.InferOutput<typeof soilSchema>;
