import dangers from '../../content/search/dangers.json' with { type: 'json' };
import { rawTokens, wordsOf } from './words.ts';

/** Words and phrases in the words that the index knows, as text that can be looked through. */
const spaced = (text: string): string =>
  ` ${wordsOf(text)
    .map(({ stem }) => stem)
    .join(' ')} `;
const naming = dangers.words.map(spaced);
const together = dangers.together.map((words) => words.map(spaced));

/** The page that must come first for a question that speaks of poison: by a word that means nothing else, or by a feed together with what makes it deadly. */
export function dangerPage(question: string): string | undefined {
  const text = spaced(question);
  const has = (word: string): boolean => text.includes(word);
  return naming.some(has) || together.every((words) => words.some(has)) ? dangers.page : undefined;
}

/** The words that speak of poison, so that none of them is taken for a slip. */
export const dangerTokens: readonly string[] = [...dangers.words, ...dangers.together.flat()].flatMap(rawTokens);
