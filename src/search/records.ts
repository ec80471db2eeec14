import type { Packed } from './packed.ts';

/** What a find is called among the results. */
export const kindNames = {
  calculator: 'Calculator',
  guide: 'Guide',
  term: 'Word of the trade',
  table: 'Table',
  sheet: 'Sheet to print',
  page: 'Page',
  source: 'Source',
} as const;
export type Kind = keyof typeof kindNames;
export const isKind = (text: string | undefined): text is Kind => text !== undefined && Object.hasOwn(kindNames, text);

/** What is shown of a find. */
export interface Line {
  /** From the site's root. */
  readonly url: string;
  readonly kind: Kind;
  readonly title: string;
  /** The line under it; that of a source is a whole citation and stands in a file apart. */
  readonly lead: string;
  readonly question?: string | undefined;
  /** Places on the page that have a heading: anchor and heading. */
  readonly places?: readonly (readonly [string, string])[] | undefined;
}

/** The file with a source's citation: they are many and seldom wanted, so they are apart by the letter that the source's key begins with. */
export const citationsFile = (url: string): string => `search/citations-${url.charAt(url.indexOf('#') + 1)}.json`;

/** One thing that can be found. */
export interface SearchRecord extends Line {
  /** What people look for it by, each a word or a phrase. */
  readonly words: readonly string[];
  /** Its whole names: what is asked for by one of them and nothing else is among the first. */
  readonly names: readonly string[];
  /** What its form asks, and what can be chosen there. */
  readonly choices?: string | undefined;
  /** Its running text, cut at the headings. */
  readonly parts: readonly { readonly anchor?: string | undefined; readonly title: string; readonly text: string }[];
}

/** The built index: one file, small enough to be fetched whole. */
export interface SearchIndex {
  readonly lines: readonly Line[];
  /** How people ask for a page: the number of its line, and what the question asks for in the words that the index knows. */
  readonly asked: readonly (readonly [number, string])[];
  /** For each word, and each two that stand side by side in a name, the lines that it leads to and how well it fits each, up to `bestFit`. */
  readonly words: Packed;
  /** For each word the lines with the numbers of the places that use it most. */
  readonly places: Packed;
  /** The words that things are called by, as people type them: what a misspelled word is held against. */
  readonly naming: readonly string[];
}
export const bestFit = 30;
