import topics from '../../content/search/notHere.json' with { type: 'json' };
import { phraseFinder } from './phrases.ts';
import { stemOf } from './words.ts';

const finders = topics.map(({ asked, ask }) => ({ ask, find: phraseFinder(asked, stemOf) }));

/** Whom to ask about something that people look for and that no page here tells. */
export const whomToAsk = (question: string): string | undefined => finders.find(({ find }) => find(question).length > 0)?.ask;
/** Whom to ask where nobody wrote down who knows. */
export const anyoneToAsk = 'your county extension office, your conservation district or, for animals, your veterinarian';
