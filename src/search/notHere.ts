import topics from '../../content/search/notHere.json' with { type: 'json' };
import { phraseFinder } from './phrases.ts';

/** Plural or not: a further ending makes another word, calving is not calves. */
const oneOrMany = (token: string): string => token.replace(/s$/, '');
const finders = topics.map(({ asked, ask }) => ({ ask, find: phraseFinder(asked, oneOrMany) }));

/** Whom to ask about something that people look for and that no page here tells; the longest name of it decides. */
export const whomToAsk = (question: string): string | undefined =>
  finders
    .flatMap(({ ask, find }) => find(question).map((phrase) => ({ ask, length: phrase.length })))
    .sort((one, other) => other.length - one.length)[0]?.ask;
/** Whom to ask where nobody wrote down who knows. */
export const anyoneToAsk = 'your county extension office, your conservation district or, for animals, your veterinarian';
