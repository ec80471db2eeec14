import listed from '../../content/search/dangers.json' with { type: 'json' };
import { rawTokens, wordsOf } from './words.ts';

export interface Danger {
  /** The page that must come first. */
  readonly page: string;
  /** The caution on it that is the answer; without one it is the whole page. */
  readonly box?: { readonly anchor: string; readonly title: string } | undefined;
}
interface Listed extends Danger {
  readonly words: readonly string[];
  readonly together: readonly (readonly string[])[];
}
/** The first one that a question speaks of decides. */
const dangers: readonly Listed[] = listed;

/** Words and phrases in the words that the index knows, as text that can be looked through. */
const spaced = (text: string): string =>
  ` ${wordsOf(text)
    .map(({ stem }) => stem)
    .join(' ')} `;
interface Finder {
  readonly danger: Danger;
  readonly naming: readonly string[];
  readonly together: readonly (readonly string[])[];
}
let made: readonly Finder[] | undefined;
/** Made with the first question, as the words are that they are told in. */
function finders(): readonly Finder[] {
  made ??= dangers.map(({ words, together, ...danger }) => ({
    danger,
    naming: words.map(spaced),
    together: together.map((group) => group.map(spaced)),
  }));
  return made;
}

/** The danger that a question speaks of: by words that mean nothing else, or by one of each group, as a feed and what makes it deadly. */
export function dangerIn(question: string): Danger | undefined {
  const text = spaced(question);
  const has = (word: string): boolean => text.includes(word);
  return finders().find(({ naming, together }) => naming.some(has) || together.every((words) => words.some(has)))?.danger;
}

/** The words that speak of danger, so that none of them is taken for a slip. */
export const dangerTokens: readonly string[] = dangers.flatMap(({ words, together }) => [...words, ...together.flat()]).flatMap(rawTokens);
