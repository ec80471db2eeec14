import type { APIRoute } from 'astro';
import { guides, sourceKeysOf } from '../../guides/guides.ts';
import { sourceOf, sources } from '../../sources/citation.ts';
import { type KeyedSource, type ReferenceFormat, referenceFile, referenceFormats } from '../../sources/referenceFiles.ts';

interface Props {
  readonly list: readonly KeyedSource[];
  readonly format: ReferenceFormat;
}

/** Every source in one file, and those of each guide in one of its own. */
const lists = [{ name: 'holdwater', list: sources }, ...guides.map((guide) => ({ name: guide.id, list: sourceKeysOf(guide).map(sourceOf) }))].filter(
  ({ list }) => list.length > 0,
);

export const getStaticPaths = () =>
  lists.flatMap(({ name, list }) => referenceFormats.map((format) => ({ params: { list: name, format }, props: { list, format } })));

export const GET: APIRoute<Props> = ({ props: { list, format } }) => new Response(referenceFile(list, format));
