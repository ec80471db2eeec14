import { type CollectionEntry, getCollection } from 'astro:content';

export type Sheet = CollectionEntry<'sheets'>;
export type SheetPart = Sheet['data']['parts'][number];

export const sheets: readonly Sheet[] = (await getCollection('sheets')).sort(
  (one, other) => one.data.order - other.data.order || one.id.localeCompare(other.id),
);

/** The sheets whose numbers a calculator takes, or that go with a guide. */
export const sheetsOf = (kind: 'calculators' | 'guides', slug: string): readonly Sheet[] => sheets.filter(({ data }) => data[kind].includes(slug));
