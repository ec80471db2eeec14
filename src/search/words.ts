import synonyms from '../../content/search/synonyms.json' with { type: 'json' };

/** Words that say nothing of what is looked for. */
const emptyWords = new Set(
  (
    'a about all am an and any are as at be been but by can could did do does doing for from get go got had has have how i if im in into is it its just let many me ' +
    'mean meaning much must my need of off on or our out should so than that the their them then there these they this to too up us was we what whats when where ' +
    'which who why will with would you your'
  ).split(' '),
);
/** The longest way round that one word is said in: `water standing in`. */
const mostWords = 4;

const rawTokens = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/[\u2018\u2019']/g, '')
    // 27,154 is also typed 27154.
    .replace(/(\d),(?=\d{3}(?!\d))/g, '$1')
    .match(/\d+\.\d+|[\p{L}\p{N}]+/gu) ?? [];

const canonicalByOther = new Map(
  Object.entries(synonyms).flatMap(([canonical, others]) =>
    [canonical, ...others].map((other) => [rawTokens(other).join(' '), rawTokens(canonical)] as const),
  ),
);
const canonicalOf = (words: string): readonly string[] | undefined => canonicalByOther.get(words) ?? canonicalByOther.get(words.replace(/s$/, ''));

/** A text in the words that the index knows: one for each of those that people use for the same thing. Pages and questions both go through it. */
export function canonicalWords(text: string): readonly string[] {
  const tokens = rawTokens(text);
  const words: string[] = [];
  for (let at = 0; at < tokens.length; ) {
    let length = Math.min(mostWords, tokens.length - at);
    while (length > 0 && !canonicalOf(tokens.slice(at, at + length).join(' '))) length -= 1;
    words.push(...(length > 0 ? (canonicalOf(tokens.slice(at, at + length).join(' ')) ?? []) : tokens.slice(at, at + 1)));
    at += Math.max(1, length);
  }
  return words;
}

/** What a question asks for; of a question that has none of it, all its words. */
export function askedWords(question: string): readonly string[] {
  const words = canonicalWords(question);
  const telling = words.filter((word) => !emptyWords.has(word));
  return [...new Set(telling.length > 0 ? telling : words)];
}

/** One word for a whole name, so that a question that is nothing but the name can be told from one that only has its words. */
export const wholeName = (name: string): string => `${askedWords(name).join('')}whole`;

/** The words of a page that can be asked for, each once. */
export const tellingWords = (text: string): readonly string[] => [
  ...new Set(canonicalWords(text).filter((word) => word.length > 1 && !emptyWords.has(word) && !/^\d{1,3}$|\./.test(word))),
];
