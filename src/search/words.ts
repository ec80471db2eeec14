import { stemmer } from 'stemmer';
import synonyms from '../../content/search/synonyms.json' with { type: 'json' };

/** Words that say nothing of what is looked for. */
const emptyWords = new Set(
  (
    'a about all am an and any are as at be because been but by came can cant come could did do does doesnt doing dont ever for from get gets getting give go goes going got had has ' +
    'have having hers his how i id if ill im in into is isnt it its ive just keep let lets like look make many may me mean meaning means might mine much must my need needs ' +
    'now of off ok okay on one onto or our out over per please put really same see should shouldnt so some somebody something than that the their them then there these they thing ' +
    'things this those through thru to too try us use used using very want wants was way we were what whats when whens where wheres which who whom why will with wont would ' +
    'you your yours'
  ).split(' '),
);
/** The longest way round that one word is said in: `water standing in`. */
const mostWords = 4;

export const rawTokens = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/[\u2018\u2019']/g, '')
    // 27,154 is also typed 27154.
    .replace(/(\d),(?=\d{3}(?!\d))/g, '$1')
    .match(/\d+\.\d+|[\p{L}\p{N}]+/gu) ?? [];

/** Words that lose another meaning with their ending: stocking is not stock, ponding not a pond. */
const whole: ReadonlyMap<string, string> = new Map([
  ['stocking', 'stocking'],
  ['ponding', 'ponding'],
  ['ponded', 'ponding'],
  ['erodibility', 'erodibility'],
  ['erosivity', 'erosivity'],
]);
/** A word without its ending. Short ones are abbreviations and stay as they are. */
const shortest = 4;
export const stemOf = (token: string): string =>
  whole.get(token) ?? (token.length < shortest || /\d/.test(token) ? token.replace(/^(\p{L}{2})s$/u, '$1') : stemmer(token));
const stemsOf = (text: string): readonly string[] => rawTokens(text).map(stemOf);

let synonymsByStems: ReadonlyMap<string, readonly string[]> | undefined;
/** Made with the first question: a page that is only opened to be searched shall not wait for it. */
function canonicalByOther(): ReadonlyMap<string, readonly string[]> {
  synonymsByStems ??= new Map(
    Object.entries(synonyms).flatMap(([canonical, others]) =>
      [canonical, ...others].map((other) => [stemsOf(other).join(' '), stemsOf(canonical)] as const),
    ),
  );
  return synonymsByStems;
}

/** Between the parts of a name that is also one word. */
const joint = '_';
export const isJoined = (stem: string): boolean => stem.includes(joint);

export interface Word {
  /** As it was typed. */
  readonly typed: string;
  /** What the index knows it by. */
  readonly stem: string;
}

/** A text in the words that the index knows: one for each of those that people use for the same thing. Pages and questions both go through it. */
export function wordsOf(text: string): readonly Word[] {
  const known = canonicalByOther();
  const tokens = rawTokens(text);
  const stems = tokens.map(stemOf);
  const words: Word[] = [];
  for (let at = 0; at < tokens.length; ) {
    let length = Math.min(mostWords, tokens.length - at);
    while (length > 0 && !known.has(stems.slice(at, at + length).join(' '))) length -= 1;
    const taken = Math.max(1, length);
    const typed = tokens.slice(at, at + taken).join(' ');
    const name = length > 0 ? known.get(stems.slice(at, at + length).join(' ')) : undefined;
    for (const stem of name ?? stems.slice(at, at + 1)) words.push({ typed, stem });
    // A name of several words is also one word: `stocking rate` is more than stock and a rate.
    if (name && name.length > 1) words.push({ typed, stem: name.join(joint) });
    at += taken;
  }
  return words;
}

const isEmpty = ({ typed, stem }: Word): boolean => emptyWords.has(typed) || emptyWords.has(stem);
/** A plain number is seldom what is looked for: it counts the cows of who asks. */
const isPlainNumber = ({ stem }: Word): boolean => /^\d{1,3}$|\./.test(stem);

const isTelling = (word: Word): boolean => word.stem.length > 1 && !isEmpty(word) && !isPlainNumber(word);

/** What a question asks for, each word once; of a question that has none of it, all its words. */
export function askedWords(question: string): readonly Word[] {
  const words = wordsOf(question).filter((word, at, all) => all.findIndex(({ stem }) => stem === word.stem) === at);
  const telling = words.filter(isTelling);
  return telling.length > 0 ? telling : words;
}

/** The words of a page that can be asked for. */
export const tellingStems = (text: string): readonly string[] =>
  wordsOf(text)
    .filter(isTelling)
    .map(({ stem }) => stem);

/** The same words as people type them. */
export const tellingTokens = (text: string): readonly string[] => rawTokens(text).filter((token) => token.length > 1 && !emptyWords.has(token));

/** One word for a whole name, so that a question that is nothing but the name can be told from one that only has its words. */
export const wholeName = (name: string): string =>
  `=${askedWords(name)
    .map(({ stem }) => stem)
    .join(' ')}`;

/** Each two words that stand side by side. */
export const pairsIn = (stems: readonly string[]): readonly string[] => {
  const single = stems.filter((stem) => !isJoined(stem));
  return single.slice(1).map((stem, at) => `${single[at]} ${stem}`);
};

/** The words that `wordsOf` knows without an index. */
export const knownTokens: readonly string[] = [
  ...new Set(Object.entries(synonyms).flatMap(([canonical, others]) => [canonical, ...others].flatMap(rawTokens))),
];

/** A question with each of its words put right by `mend`. */
export const mended = (question: string, mend: (token: string, isLast: boolean) => string): string =>
  rawTokens(question)
    .map((token, at, all) => (emptyWords.has(token) || /\d/.test(token) ? token : mend(token, at === all.length - 1)))
    .join(' ');
