import { lettersApart } from '../../calculators/kit/lettersApart.ts';

const shortest = 4;
const longFrom = 8;

/** The known word that somebody may have meant. A short word allows one slip, a long one two; the first letter is seldom wrong. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  if (word.length < shortest || /\d/.test(word)) return undefined;
  const most = word.length < longFrom ? 1 : 2;
  return known
    .filter((each) => Math.abs(each.length - word.length) <= most && each[0] === word[0])
    .map((each) => ({ each, apart: lettersApart(word, each) }))
    .filter(({ apart }) => apart <= most)
    .sort((one, other) => one.apart - other.apart)[0]?.each;
}

const mostSuggested = 5;

/** Known words that look like those that nothing was found for, to offer: further off than what is taken without asking. */
export const nearWords = (words: readonly string[], known: readonly string[]): readonly string[] =>
  words
    .flatMap((word) => known.map((each) => ({ each, apart: lettersApart(word, each), most: word.length / 2 })))
    .filter(({ each, apart, most }) => apart <= most && !/\d/.test(each))
    .sort((one, other) => one.apart - other.apart)
    .slice(0, mostSuggested)
    .map(({ each }) => each);
