import { toJsonSchema } from '@valibot/to-json-schema';
import { placeFileSchema } from '../../place/model/file.ts';
import { placeVersion } from '../../place/model/migrations/place.ts';

const addressOf = (version: number): string => `schema-${version}.json`;

/** By the version of the places in a file. An address that was given out goes on answering: what older files held is still read, and how one is written now stands under the newest. */
export const getStaticPaths = () =>
  Array.from({ length: placeVersion }, (_, index) => ({ params: { version: String(index + 1) }, props: { version: index + 1 } }));

/** What a file of a place may hold, for programs that write or read one; from the very schema that reads it here. */
export const GET = ({ props: { version } }: { readonly props: { readonly version: number } }): Response => {
  const comment =
    version === placeVersion
      ? `Places are of version ${placeVersion}. Older ones are read too, and written anew as this.`
      : `Places are of version ${placeVersion} now, and this is the same as ${addressOf(placeVersion)}. Files with places of version ${version} are still read.`;
  return new Response(`${JSON.stringify({ title: 'Holdwater: file of a place', $comment: comment, ...toJsonSchema(placeFileSchema) }, null, 1)}\n`, {
    headers: { 'Content-Type': 'application/schema+json' },
  });
};
