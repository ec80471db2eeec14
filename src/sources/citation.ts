import { type CollectionEntry, getCollection } from 'astro:content';
import { readPerson } from './authorName.ts';

export type SourceEntry = CollectionEntry<'sources'>;

const familyName = (author: string): string => readPerson(author)?.family ?? author;

const givenFirst = (author: string): string => {
  const found = readPerson(author);
  if (!found) return author;
  return `${found.given} ${found.family}${found.role === undefined ? '' : ` (${found.role})`}`;
};

const listed = (names: readonly string[]): string => {
  if (names.length < 3) return names.join(' and ');
  return `${names.slice(0, -1).join(', ')}, and ${names.at(-1)}`;
};

const closed = (text: string): string => (/[.?!]$/.test(text) ? text : `${text}.`);

const byline = ({ data }: SourceEntry): string => {
  const [first = '', ...others] = data.authors.map(familyName);
  return others.length > 1 ? `${first} et al.` : listed([first, ...others]);
};

const order = ({ id, data }: SourceEntry): string => `${data.authors.join(' ')} ${data.year} ${id}`;

/** Every source, in the order of a list of references. */
export const sources: readonly SourceEntry[] = (await getCollection('sources')).sort((one, other) => order(one).localeCompare(order(other), 'en'));

const bylineAndYear = (entry: SourceEntry): string => `${byline(entry)} ${entry.data.year}`;

const sameBylineAndYear = Map.groupBy(sources, bylineAndYear);

/** `2015`; where two sources would read alike, `2015a` and `2015b`, or `n.d.-a` and `n.d.-b`. */
const yearOf = (entry: SourceEntry): string => {
  const { year } = entry.data;
  const alike = sameBylineAndYear.get(bylineAndYear(entry)) ?? [];
  if (alike.length < 2) return year;
  const letter = String.fromCharCode('a'.charCodeAt(0) + alike.findIndex(({ id }) => id === entry.id));
  return `${year}${/\d$/.test(year) ? '' : '-'}${letter}`;
};

/** `Ball et al. 2015`. */
export const shortCitation = (entry: SourceEntry): string => `${byline(entry)} ${yearOf(entry)}`;

/** The citation in author-year form, without an address. */
export const fullCitation = (entry: SourceEntry): string => {
  const { authors, title, container, pages } = entry.data;
  const [first = '', ...others] = authors;
  return [listed([first, ...others.map(givenFirst)]), yearOf(entry), title, container, pages]
    .filter((part) => part !== undefined)
    .map(closed)
    .join(' ');
};

/** The source of a key, or an error that stops the build. */
export const sourceOf = (key: string): SourceEntry => {
  const found = sources.find(({ id }) => id === key);
  if (!found) throw new Error(`no source "${key}" in content/sources`);
  return found;
};
