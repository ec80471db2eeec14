import { Cite, type Item, type Name, plugins } from '@citation-js/core';
import '@citation-js/plugin-bibtex';
import '@citation-js/plugin-ris';
import { readPerson } from './authorName.ts';

/** A source as its file holds it. */
export interface Source {
  readonly kind: 'report' | 'book' | 'article' | 'page' | 'dataset' | 'standard';
  readonly authors: readonly string[];
  readonly year: string;
  readonly title: string;
  readonly container?: string | undefined;
  readonly pages?: string | undefined;
  readonly url?: string | undefined;
  readonly copy: string;
}
export interface KeyedSource {
  readonly id: string;
  readonly data: Source;
}

/** Our kinds, and what reference managers call them. */
const types = { report: 'report', book: 'book', article: 'article-journal', page: 'webpage', dataset: 'dataset', standard: 'standard' } as const;

const nameOf = (author: string): Name => {
  const found = readPerson(author);
  return found ? { family: found.family, given: found.given } : { literal: author };
};

/** `Ecological Applications 2(4)` and `Journal of Animal Science, 81` are a journal, its volume and its issue. */
function journalOf(container: string): Pick<Item, 'container-title' | 'volume' | 'issue'> {
  const { name, volume, issue } = /^(?<name>.*\D),? (?<volume>\d{1,3})(?:\((?<issue>[^)]+)\))?$/.exec(container)?.groups ?? {};
  if (name === undefined || volume === undefined) return { 'container-title': container };
  return { 'container-title': name.replace(/,$/, ''), volume, ...(issue === undefined ? {} : { issue }) };
}

const placeOf = (kind: Source['kind'], container: string): Partial<Item> => (kind === 'article' ? journalOf(container) : { publisher: container });

/** A source as an item of the Citation Style Language. */
export function itemOf({ id, data }: KeyedSource): Item {
  const { kind, authors, year, title, container, pages, url, copy } = data;
  const editors = authors.filter((author) => readPerson(author)?.role !== undefined).map(nameOf);
  const writers = authors.filter((author) => readPerson(author)?.role === undefined).map(nameOf);
  const doi = /^https:\/\/doi\.org\/(10\..+)$/.exec(url ?? '')?.[1];
  return {
    id,
    type: types[kind],
    title,
    ...(writers.length > 0 ? { author: writers } : {}),
    ...(editors.length > 0 ? { editor: editors } : {}),
    // A work without a date has none here either, and the letter that tells two of one year apart is ours.
    ...(/^\d/.test(year) ? { issued: { 'date-parts': [[Number.parseInt(year, 10)]] } } : {}),
    ...(container === undefined ? {} : placeOf(kind, container)),
    ...(pages === undefined ? {} : { page: pages }),
    ...(url === undefined ? {} : { URL: url }),
    ...(doi === undefined ? {} : { DOI: doi }),
    note: copy,
  };
}

/** The file endings that a list of sources is offered in. */
export const referenceFormats = ['bib', 'ris'] as const;
export type ReferenceFormat = (typeof referenceFormats)[number];

// The key under which this site cites a source is the key in the file too.
Object.assign(plugins.config.get('@bibtex').format, { useIdAsLabel: true, checkLabel: false });

/** The library breaks lines of RIS at 70 letters, in the middle of words and addresses, and few programs put them together again. */
const unfolded = (ris: string): string => ris.replace(/\n(?![A-Z][A-Z0-9] {2}- |$)/g, '');

/** The library escapes what TeX would take for a command, but not in the name of a body. */
const escapedBodies = (item: Item): Item => {
  const escaped = (names: readonly Name[]): Name[] =>
    names.map(({ literal, ...name }) => (literal === undefined ? name : { literal: literal.replace(/[&%$#_]/g, '\\$&') }));
  return { ...item, ...(item.author ? { author: escaped(item.author) } : {}), ...(item.editor ? { editor: escaped(item.editor) } : {}) };
};

/** A list of sources for a reference manager, as BibTeX or RIS. */
export function referenceFile(sources: readonly KeyedSource[], format: ReferenceFormat): string {
  const items = sources.map(itemOf);
  const text = format === 'bib' ? new Cite(items.map(escapedBodies)).format('bibtex') : unfolded(new Cite(items).format('ris'));
  return `${text.trim()}\n`;
}
