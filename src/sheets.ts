import { type CollectionEntry, getCollection } from 'astro:content';

export type Sheet = CollectionEntry<'sheets'>;
export type SheetPart = Sheet['data']['parts'][number];

export const sheets: readonly Sheet[] = (await getCollection('sheets')).sort(
  (one, other) => one.data.order - other.data.order || one.id.localeCompare(other.id),
);
