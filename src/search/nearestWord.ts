import { lettersApart } from '../../calculators/kit/lettersApart.ts';

const shortest = 4;
const longFrom = 8;
/** Letters that people put for one another because they sound alike. */
const alike = ['aeiouy', 'ckqs', 'sz', 'gj', 'fv', 'mn', 'dt', 'bp'];
/** Up to here a word with another letter is more often another word: burnt is not burst. */
const oftenAnother = 6;

/** Whether one letter stands in place of another that sounds otherwise. */
function isAnotherWord(word: string, known: string): boolean {
  if (word.length !== known.length || word.length > oftenAnother) return false;
  const differing = [...word].flatMap((letter, at) => (letter === known[at] ? [] : [[letter, known[at] ?? ''] as const]));
  const [only, second] = differing;
  return only !== undefined && second === undefined && !alike.some((letters) => only.every((letter) => letters.includes(letter)));
}

/** The known word that somebody may have meant. A short word allows one slip, a long one two; the first letter is seldom wrong. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  if (word.length < shortest || /\d/.test(word)) return undefined;
  const most = word.length < longFrom ? 1 : 2;
  return known
    .filter((each) => Math.abs(each.length - word.length) <= most && each[0] === word[0])
    .map((each) => ({ each, apart: lettersApart(word, each) }))
    .filter(({ each, apart }) => apart <= most && !isAnotherWord(word, each))
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
