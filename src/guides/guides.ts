import { type CollectionEntry, getCollection } from 'astro:content';
import { rowOf, tableNamed } from '../../content/tables/tables.ts';

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

/** Names of the tables that a guide shows or takes figures from. */
export const tablesIn = (guide: Guide): readonly string[] => [
  ...new Set([...attributesIn(guide, 'Table', 'of'), ...attributesIn(guide, 'Tabled', 'of')]),
];

/** Sources of the rows that a guide shows of published tables. */
const tableSourcesIn = (guide: Guide): readonly string[] =>
  [...(guide.body ?? '').matchAll(/<Tabled?\s[^>]*>/g)].flatMap(([tag]) => {
    const attribute = (name: RegExp): string | undefined => name.exec(tag)?.[1];
    const table = tableNamed(attribute(/\bof="([^"]+)"/) ?? '');
    const rows = attribute(/\brows?="([^"]+)"/);
    return (
      rows === undefined
        ? table.rows
        : rows
            .trim()
            .split(/\s+/)
            .map((key) => rowOf(table, key))
    ).map(({ source }) => source);
  });

/** Keys of the sources that a guide cites in its text, then of the tables in it, then of those that its head names. */
export const sourceKeysOf = (guide: Guide): readonly string[] => [
  ...new Set([...attributesIn(guide, 'Cite', 'key'), ...tableSourcesIn(guide), ...guide.data.sources]),
];

/** Slugs of the calculators that stand in a guide, then of those that its head names. */
export const calculatorSlugsOf = (guide: Guide): readonly string[] => [
  ...new Set([...attributesIn(guide, 'Calculator', 'slug'), ...guide.data.calculators]),
];

/** What a guide shows of the local values. */
export const localsOf = (guide: Guide): readonly string[] => attributesIn(guide, 'Local', 'of');

/** The calculator that a reader is led to before the first chapter, where the text there names none by itself. */
export const calculatorFirstOf = (guide: Guide): string | undefined => {
  const opening = (guide.body ?? '').split(/^## /m)[0] ?? '';
  return /<Calculator\s|\]\(\/calculators\//.test(opening) ? undefined : calculatorSlugsOf(guide)[0];
};
