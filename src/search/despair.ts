import despair from '../../content/search/despair.json' with { type: 'json' };
import { nearestWord } from './nearestWord.ts';
import { phraseFinder } from './phrases.ts';
import { rawTokens } from './words.ts';

const speaking = phraseFinder(despair.phrases);
/** A slip in a long word on its own is forgiven: who asks in need does not type twice. */
const leastLetters = 6;
const longWords = despair.phrases.filter((phrase) => !phrase.includes(' ') && phrase.length > leastLetters);

/** Said above the lines to call. */
export const warmSentence: string = despair.says;

/** Whether a question speaks of despair, so that the lines to call must stand above every result. The list is common practice, kept for tact: nothing on it speaks of grass, weeds or cattle. */
export function speaksOfDespair(question: string): boolean {
  const text = despair.except.reduce((rest, phrase) => rest.replace(phrase, ' , '), rawTokens(question).join(' '));
  return speaking(text).length > 0 || rawTokens(text).some((token) => token.length >= leastLetters && nearestWord(token, longWords) !== undefined);
}
