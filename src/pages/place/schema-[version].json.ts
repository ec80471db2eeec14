import { toJsonSchema } from '@valibot/to-json-schema';
import { fileVersion, placeFileSchema } from '../../place/model/file.ts';

export const getStaticPaths = () => [{ params: { version: String(fileVersion) } }];

/** What a file of a place may hold, for programs that write or read one; from the very schema that reads it here. */
export const GET = (): Response =>
  new Response(`${JSON.stringify({ title: 'Holdwater: file of a place', ...toJsonSchema(placeFileSchema) }, null, 1)}\n`, {
    headers: { 'Content-Type': 'application/schema+json' },
  });
