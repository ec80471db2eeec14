import * as v from 'valibot';
import { amountSchema, between } from './parts.ts';
import { frames } from './words.ts';

const inches = v.optional(between(0, 1000));
export const toolsSchema = v.strictObject({
  frame: v.optional(v.strictObject({ kind: v.optional(v.picklist(frames)), aroundIn: inches, acrossIn: inches, lengthIn: inches, widthIn: inches })),
  ringBoreIn: inches,
  ringInsertedIn: inches,
  pouringMl: v.optional(amountSchema),
  canAcrossIn: inches,
  canTallIn: inches,
  paceFt: v.optional(between(0, 20)),
});
export type Tools = v.InferOutput<typeof toolsSchema>;
