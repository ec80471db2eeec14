import * as v from 'valibot';
import { fileVersion, type PlaceFile, placeFileSchema } from './file.ts';
import { type Read, readAs } from './readRecord.ts';

/** The frame of a file, without what is in it: that is read one by one, so that one wrong record does not cost the others. */
const frameSchema = v.object({
  ...v.omit(placeFileSchema, ['places', 'rows']).entries,
  places: v.array(v.unknown()),
  rows: v.optional(v.array(v.unknown())),
});
export type FileFrame = Omit<PlaceFile, 'places' | 'rows'> & { readonly places: readonly unknown[]; readonly rows?: readonly unknown[] | undefined };
export const readFrame = (raw: unknown): Read<FileFrame> =>
  readAs({ schema: frameSchema, migrations: {}, version: fileVersion, otherwise: 'It is not a file of a place.' }, raw);
