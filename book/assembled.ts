import type { HTMLElement } from 'node-html-parser';
import { chapterOf } from './chapter.ts';
import { bookParts, type Part, pageAt } from './contents.ts';
import { leadLinks } from './references.ts';
import { type Entry, indexOf } from './wordIndex.ts';

export interface Assembled {
  readonly parts: readonly Part[];
  /** Each chapter's text, by its id, its links led through the book. */
  readonly texts: ReadonlyMap<string, HTMLElement>;
  readonly index: readonly Entry[];
  /** What is said ahead of everything: what these estimates are, and who comes first. */
  readonly promise: string;
  /** The day on which the pages were built. */
  readonly built: string;
}

/** Only sources that the book names; the site lists those of its checks as well. */
function onlyNamed(sources: HTMLElement, named: ReadonlySet<string>): void {
  for (const source of sources.querySelectorAll('li[id]')) if (!named.has(source.id)) source.remove();
  for (const letter of sources.querySelectorAll('section.source-letter')) if (!letter.querySelector('li')) letter.remove();
}

/**
 * The whole book from a built site. `linkTo` and `withPages` as for `leadLinks`. Throws with the address where a page is missing.
 */
export function assembled(dist: string, linkTo: (target: string) => string, withPages: boolean): Assembled {
  const parts = bookParts(dist);
  const chapters = parts.flatMap((part) => part.chapters);
  const read = chapters.map((chapter) => ({ chapter, main: chapterOf(dist, chapter) }));
  const index = indexOf(dist, read);
  const ids = new Set(chapters.map(({ id }) => id));
  const targets = new Set(read.flatMap(({ chapter, main }) => leadLinks(main, chapter, ids, linkTo, withPages)));
  const home = pageAt(dist, '/');
  const texts = new Map(read.map(({ chapter, main }) => [chapter.id, main]));
  const sources = texts.get('sources');
  if (sources) onlyNamed(sources, targets);
  for (const { chapter, main } of read) main.querySelector('h1')?.setAttribute('id', chapter.id);
  return {
    parts,
    texts,
    index,
    promise: home.querySelector('footer.bottom p')?.innerHTML ?? '',
    built: pageAt(dist, '/calculators/rain-on-ground/').querySelector('[data-built]')?.getAttribute('data-built') ?? '',
  };
}
