import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Answer, openSearcher } from '../../src/search/ask.ts';
import type { SearchIndex } from '../../src/search/records.ts';

/** The index of a built site. */
export const builtIndex = (folder: string): SearchIndex => JSON.parse(readFileSync(join(folder, 'search/index.json'), 'utf8'));

/** An address as the judged questions write it, without outer slashes. */
export const trimmed = (url: string): string => url.replace(/^\/|\/(?=#|$)/g, '');

export interface BuiltSearch {
  readonly answer: (question: string) => Answer;
  /** The addresses found, best first. */
  readonly find: (question: string, most: number) => readonly string[];
}
/** Asks the index of a built site as the page of search does. */
export function openBuiltSearch(folder: string): BuiltSearch {
  const answer = openSearcher(builtIndex(folder));
  return {
    answer,
    find: (question, most) =>
      answer(question)
        .hits.slice(0, most)
        .map(({ url }) => trimmed(url)),
  };
}
