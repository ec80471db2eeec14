import { type CollectionEntry, getCollection } from 'astro:content';
import type { SourceLinks } from '../catalog/drawWorking.ts';
import { href } from '../site/href.ts';
import { readPerson } from './authorName.ts';
import { entryPath, letterOf } from './entryPath.ts';
import { byAuthor, type Cited, listed, shortCitations } from './shortCitation.ts';

export type SourceEntry = CollectionEntry<'sources'>;

const givenFirst = (author: string): string => {
  const found = readPerson(author);
  if (!found) return author;
  return `${found.given} ${found.family}${found.role === undefined ? '' : ` (${found.role})`}`;
};

const closed = (text: string): string => (/[.?!]$/.test(text) ? text : `${text}.`);

const cited = ({ id, data }: SourceEntry): Cited => ({ id, ...data });

/** Every source, in the order of a list of references. */
export const sources: readonly SourceEntry[] = (await getCollection('sources')).sort((one, other) => byAuthor(cited(one), cited(other)));

/** The same under the letters that they are listed by. */
export const sourcesByLetter: readonly (readonly [string, readonly SourceEntry[]])[] = [...Map.groupBy(sources, ({ data }) => letterOf(data))];

const short = shortCitations(sources.map(cited));

const shortOf = ({ id }: SourceEntry) => {
  const found = short.get(id);
  if (!found) throw new Error(`no source "${id}" in content/sources`);
  return found;
};

/** `Ball et al. 2015`. */
export const shortCitation = (entry: SourceEntry): string => shortOf(entry).short;

/** The citation in author-year form, without an address. */
export const fullCitation = (entry: SourceEntry): string => {
  const { authors, title, container, pages } = entry.data;
  const [first = '', ...others] = authors;
  return [listed([first, ...others.map(givenFirst)]), shortOf(entry).year, title, container, pages]
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

/** How sources are named and linked where their keys stand beside a figure. */
export const sourceLinks: SourceLinks = { short: (key) => shortCitation(sourceOf(key)), href: (key) => href(entryPath(cited(sourceOf(key)))) };
