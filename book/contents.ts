import { type HTMLElement, parse } from 'node-html-parser';
import { readText } from '../src/integrations/builtFiles.ts';

export type Kind = 'guide' | 'working' | 'table' | 'words' | 'sources';
/** A page of the built site that is a chapter of the book. */
export interface Chapter {
  readonly kind: Kind;
  /** Its name in the book: `guides-resting-grass`. */
  readonly id: string;
  /** Where it stands on the site, `/guides/resting-grass/`. */
  readonly address: string;
  readonly title: string;
}
export interface Part {
  readonly title: string;
  readonly chapters: readonly Chapter[];
}

export const idOf = (address: string): string => address.replace(/^\/|\/$/g, '').replaceAll('/', '-');
export const pageAt = (dist: string, address: string): HTMLElement => parse(readText(dist, `${address.slice(1)}index.html`));

/** The chapters that a page of the site lists, under its own headings and in its own order. */
function listed(dist: string, address: string, kind: Kind): readonly Part[] {
  const topics = pageAt(dist, address).querySelectorAll('main section.topic');
  if (topics.length === 0) throw new Error(`${address} lists nothing by topic`);
  return topics.map((topic) => ({
    title: topic.querySelector('h2')?.text.trim() ?? '',
    chapters: topic.querySelectorAll('h3 a').map((link) => {
      const to = link.getAttribute('href') ?? '';
      return { kind, id: idOf(to), address: to, title: link.text.trim() };
    }),
  }));
}

/** What the book holds, in the order in which it is read. `dist`: the built site. */
export const bookParts = (dist: string): readonly Part[] => [
  ...listed(dist, '/guides/', 'guide'),
  ...listed(dist, '/calculators/', 'working').map(({ title, chapters }) => ({ title: `By hand: ${title.toLowerCase()}`, chapters })),
  ...listed(dist, '/tables/', 'table').map(({ title, chapters }) => ({ title: `Tables: ${title.toLowerCase()}`, chapters })),
  {
    title: 'Words and sources',
    chapters: [
      { kind: 'words', id: 'glossary', address: '/glossary/', title: 'Words of the trade' },
      { kind: 'sources', id: 'sources', address: '/sources/', title: 'Sources' },
    ],
  },
];
