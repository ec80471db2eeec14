import type { Calculator } from '../../calculators/kit/define.ts';
import { type Term, termsIn } from '../guides/glossary.ts';

const spoken = new Set(['label', 'help', 'field', 'ask', 'title', 'lead']);

/** What a definition says to a reader, wherever in it the words stand. */
const wordsIn = (part: unknown, names: ReadonlySet<string> = spoken): readonly string[] =>
  typeof part !== 'object' || part === null
    ? []
    : Object.entries(part).flatMap(([name, value]) => (typeof value === 'string' ? (names.has(name) ? [value] : []) : wordsIn(value, names)));

/** The trade words on a calculator's form and results that not every reader knows. */
export const wordsOfCalculator = ({ title, lead, inputs, quantities, limits }: Calculator): readonly Term[] =>
  termsIn([title, lead, ...limits, ...wordsIn(inputs), ...wordsIn(quantities)].join('\n')).filter(({ everyday }) => !everyday);

/** What its form asks, and what can be chosen there, folded or not: what search reads of a form. */
export const choicesOf = ({ inputs }: Calculator): string => [...new Set(wordsIn(inputs, new Set(['label', 'group'])))].join(' ');
