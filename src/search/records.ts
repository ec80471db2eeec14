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
  readonly title: string;
  readonly lead: string;
  readonly question?: string;
}

/** The file with a find's line: sources are many and seldom wanted, so theirs are apart by the letter that their key begins with. */
export const linesFile = (kind: Kind, url: string): string => (kind === 'source' ? `source-${url.charAt(url.indexOf('#') + 1)}` : kind);

/** One thing that can be found. */
export interface SearchRecord {
  readonly url: string;
  readonly kind: Kind;
  readonly title: string;
  /** The line under it. */
  readonly lead: string;
  readonly question?: string | undefined;
  /** Words that people look for it by. */
  readonly words: string;
  /** Its whole names: what is asked for by one of them and nothing else is among the first. */
  readonly names?: readonly string[];
  readonly parts: readonly { readonly anchor?: string | undefined; readonly title: string; readonly text: string }[];
}
