/** What begins a line of its own, as it stands inside a sentence: `Yes, it lasts` as `yes, it lasts`. Letters that stand for words keep their size. */
export const midSentence = (words: string): string =>
  /^\p{Lu}(?!\p{Lu})/u.test(words) ? `${words.charAt(0).toLowerCase()}${words.slice(1)}` : words;
/** What stands inside a sentence, as it begins a line of its own. */
export const capital = (text: string): string => `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;
