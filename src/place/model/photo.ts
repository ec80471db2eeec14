import * as v from 'valibot';
import { idSchema, recordEntries } from './parts.ts';

/** Written into every photo. */
export const photoVersion = 1;
export const photoTypes = ['image/webp', 'image/jpeg'] as const;
/** Drawn anew at 1,600 px a photo is far under it. */
const longestData = 4_000_000;

/** A photo of a visit, drawn anew: nothing of the file that it came from is in it, so neither is where it was taken. */
export const photoSchema = v.strictObject({
  ...recordEntries,
  v: v.literal(photoVersion),
  placeId: idSchema,
  visitId: idSchema,
  type: v.picklist(photoTypes),
  /** Its bytes as base64. */
  data: v.pipe(v.string(), v.regex(/^[A-Za-z0-9+/]+={0,2}$/), v.maxLength(longestData)),
});
export type Photo = v.InferOutput<typeof photoSchema>;
export const photoAddress = ({ type, data }: Pick<Photo, 'type' | 'data'>): string => `data:${type};base64,${data}`;
