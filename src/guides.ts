import { type CollectionEntry, getCollection } from 'astro:content';

export type Guide = CollectionEntry<'guides'>;

export const guides: readonly Guide[] = (await getCollection('guides')).sort(
  (one, other) => one.data.order - other.data.order || one.id.localeCompare(other.id),
);

/** The guide of an id, or an error that stops the build. */
export const guideOf = (id: string): Guide => {
  const found = guides.find((guide) => guide.id === id);
  if (!found) throw new Error(`no guide "${id}" in content/guides`);
  return found;
};

/** Values of one attribute of a component in the text of a guide, in the order in which they come. */
const attributesIn = (guide: Guide, component: string, attribute: string): string[] =>
  [...(guide.body ?? '').matchAll(new RegExp(`<${component}\\s[^>]*?\\b${attribute}="([^"]+)"`, 'g'))].map((found) => found[1] ?? '');

/** Keys of the sources that a guide cites in its text, then of those that its head names. */
export const sourceKeysOf = (guide: Guide): readonly string[] => [
  ...new Set([...attributesIn(guide, 'Cite', 'key'), ...guide.data.sources.map(({ id }) => id)]),
];

/** Slugs of the calculators that stand in a guide, then of those that its head names. */
export const calculatorSlugsOf = (guide: Guide): readonly string[] => [
  ...new Set([...attributesIn(guide, 'Calculator', 'slug'), ...guide.data.calculators]),
];

/** What a guide shows of the local values. */
export const localsOf = (guide: Guide): readonly string[] => attributesIn(guide, 'Local', 'of');
