import { rawTokens } from './words.ts';

/** Finds whole phrases, word by word: `end it` stands in `I want to end it`, not in `extend its`. */
export function phraseFinder(phrases: readonly string[], same: (token: string) => string = (token) => token): (text: string) => readonly string[] {
  const spaced = (text: string): string => ` ${rawTokens(text).map(same).join(' ')} `;
  const known = phrases.map((phrase) => ({ phrase, sought: spaced(phrase) }));
  return (text) => {
    const words = spaced(text);
    return known.filter(({ sought }) => words.includes(sought)).map(({ phrase }) => phrase);
  };
}
