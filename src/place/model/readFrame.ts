import * as v from 'valibot';
import type { Belongings } from './belongings.ts';
import { fileVersion, type PlaceFile, placeFileSchema } from './file.ts';
import { type Read, readAs } from './readRecord.ts';

const listSchema = v.optional(v.array(v.unknown()));
/** The frame of a file, without what is in it: that is read one by one, so that one wrong record does not cost the others. */
const frameSchema = v.object({
  ...v.omit(placeFileSchema, ['places', 'rows', 'results', 'visits', 'notes']).entries,
  places: v.array(v.unknown()),
  rows: listSchema,
  results: listSchema,
  visits: listSchema,
  notes: listSchema,
});
export type FileFrame = Omit<PlaceFile, 'places' | keyof Belongings> & { readonly places: readonly unknown[] } & {
  readonly [key in keyof Belongings]?: readonly unknown[] | undefined;
};
export const readFrame = (raw: unknown): Read<FileFrame> =>
  readAs({ schema: frameSchema, migrations: {}, version: fileVersion, otherwise: 'It is not a file of a place.' }, raw);
