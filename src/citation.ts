import { type CollectionEntry, getCollection } from 'astro:content';

export type SourceEntry = CollectionEntry<'sources'>;
type Source = SourceEntry['data'];

/** `Ball, D. M.` is a person; a body is written as it calls itself, without such initials. */
const person = /^(?<family>[^,]+), (?<given>(?:\p{Lu}[\p{L}.-]* ?)+(?:, (?:Jr|Sr|II|III)\.?)?)$/u;

const familyName = (author: string): string => person.exec(author)?.groups?.['family'] ?? author;

const givenFirst = (author: string): string => {
  const found = person.exec(author)?.groups;
  return found ? `${found['given']} ${found['family']}` : author;
};

const listed = (names: readonly string[]): string => {
  const last = names.at(-1) ?? '';
  if (names.length < 3) return names.join(' and ');
  return `${names.slice(0, -1).join(', ')}, and ${last}`;
};

const closed = (text: string): string => (/[.?!]$/.test(text) ? text : `${text}.`);

const byline = ({ authors }: Source): string => {
  const [first = '', ...others] = authors.map(familyName);
  return others.length > 1 ? `${first} et al.` : listed([first, ...others]);
};

/** The full citation in author-year form, without its address. */
export const fullCitation = (source: Source): string => {
  const [first = '', ...others] = source.authors;
  const parts = [listed([first, ...others.map(givenFirst)]), source.year, source.title, source.container, source.pages];
  return parts
    .filter((part) => part !== undefined)
    .map(closed)
    .join(' ');
};

/** Every source, in the order of a list of references. */
export const sources: readonly SourceEntry[] = (await getCollection('sources')).sort(
  (one, other) =>
    one.data.authors.join().localeCompare(other.data.authors.join()) ||
    one.data.year.localeCompare(other.data.year) ||
    one.id.localeCompare(other.id),
);

const bylineAndYear = (entry: SourceEntry): string => `${byline(entry.data)} ${entry.data.year}`;

const sameBylineAndYear = Map.groupBy(sources, bylineAndYear);

/** `Ball et al. 2015`; where two would read alike, `2015a` and `2015b`. */
export const shortCitation = (entry: SourceEntry): string => {
  const alike = sameBylineAndYear.get(bylineAndYear(entry)) ?? [];
  if (alike.length < 2) return bylineAndYear(entry);
  const letter = String.fromCharCode('a'.charCodeAt(0) + alike.findIndex(({ id }) => id === entry.id));
  return `${bylineAndYear(entry)}${entry.data.year === 'n.d.' ? '-' : ''}${letter}`;
};

/** The source of a key, or an error that stops the build. */
export const sourceOf = (key: string): SourceEntry => {
  const found = sources.find(({ id }) => id === key);
  if (!found) throw new Error(`no source "${key}" in content/sources`);
  return found;
};
