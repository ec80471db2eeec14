import type { HTMLElement } from 'node-html-parser';
import { type Chapter, pageAt } from './contents.ts';
import { anchorOf } from './references.ts';

/** A word of the index and the places where it is found. */
export interface Entry {
  readonly word: string;
  readonly targets: readonly string[];
}

/**
 * The index: words of the trade where guides use them first, and the words that people search a page with, each with its chapter. Puts an id at each use
 * of a word. Run before links are led through the book.
 */
export function indexOf(dist: string, chapters: readonly { readonly chapter: Chapter; readonly main: HTMLElement }[]): readonly Entry[] {
  const places = new Map<string, Set<string>>();
  const add = (word: string, target: string): void => void places.set(word, (places.get(word) ?? new Set()).add(target));
  const names = new Map(
    pageAt(dist, '/glossary/')
      .querySelectorAll('dl > div')
      .map((each) => [each.id, each.querySelector('dt')?.childNodes[0]?.text.trim() ?? each.id]),
  );
  for (const { chapter, main } of chapters) {
    for (const use of main.querySelectorAll('a.term')) {
      const key = (use.getAttribute('href') ?? '').split('#')[1] ?? '';
      const place = `use-${key}`;
      if (!main.querySelector(`[id="${place}"]`)) use.setAttribute('id', place);
      add(names.get(key) ?? key, anchorOf(chapter.id, place));
    }
    const searched = pageAt(dist, chapter.address).querySelector('main')?.getAttribute('data-search-words') ?? '';
    if (chapter.kind !== 'words') for (const word of searched.split('. ').filter((each) => each !== '')) add(word, chapter.id);
  }
  return [...places]
    .map(([word, targets]) => ({ word, targets: [...targets] }))
    .sort((one, other) => one.word.localeCompare(other.word, 'en', { sensitivity: 'base' }));
}
