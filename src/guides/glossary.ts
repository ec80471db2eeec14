import * as v from 'valibot';
import data from '../../content/glossary.json' with { type: 'json' };

const wordsSchema = v.pipe(v.string(), v.trim(), v.minLength(1));
const termSchema = v.strictObject({
  /** As the trade says it. */
  term: wordsSchema,
  /** The same in everyday words. */
  plain: wordsSchema,
  /** One sentence. */
  says: wordsSchema,
  /** Other words and spellings for it. The plural by `s` goes without saying. */
  forms: v.optional(v.array(wordsSchema), []),
  /** Phrases that use the word in another sense: where one stands, nothing is explained. */
  except: v.optional(v.array(wordsSchema), []),
  /** Known to every reader: stands in the glossary and is not marked in texts. */
  everyday: v.optional(v.boolean(), false),
});
export type Term = v.InferOutput<typeof termSchema>;

/** Every word that the glossary explains, in the order of the alphabet. */
export const glossary: readonly Term[] = v
  .parse(v.array(termSchema), data)
  .sort((one, other) => one.term.localeCompare(other.term, 'en', { sensitivity: 'base' }));

/** The anchor of a term on its page. */
export const anchorOf = ({ term }: Term): string => term.toLowerCase().replace(/[^a-z0-9]+/g, '-');

/** Letters such as `AUM` are matched as they stand, words in either case. */
const keyOf = (form: string): string => (/\p{Lu}{2}/u.test(form) ? form : form.toLowerCase());
/** Phrases in another sense are found like forms, so that they take the word away from them, and belong to no term. */
const termByForm = new Map<string, Term | undefined>(
  glossary.flatMap((term) => [
    ...[term.term, ...term.forms].map((form) => [keyOf(form), term] as const),
    ...term.except.map((phrase) => [keyOf(phrase), undefined] as const),
  ]),
);
/** Longer forms first: `animal unit month` is not an `animal unit`. */
const anyForm = new RegExp(
  `(?<![\\p{L}\\p{N}-])(?:${[...termByForm.keys()].sort((one, other) => other.length - one.length || one.localeCompare(other)).join('|')})s?(?![\\p{L}\\p{N}-])`,
  'giu',
);

const lookUp = (word: string): Term | undefined => {
  const singular = word.replace(/s$/, '');
  for (const key of [word, word.toLowerCase(), singular, singular.toLowerCase()]) {
    if (termByForm.has(key)) return termByForm.get(key);
  }
  return undefined;
};

export interface Found {
  readonly term: Term;
  readonly word: string;
  readonly at: number;
}

/** Where a text uses words of the glossary, in the order of the text. */
export const findTerms = (text: string): readonly Found[] =>
  [...text.matchAll(anyForm)].flatMap((match) => {
    const term = lookUp(match[0]);
    return term ? [{ term, word: match[0], at: match.index }] : [];
  });

/** The words of the glossary that a text uses, in the order of the alphabet. */
export const termsIn = (text: string): readonly Term[] => {
  const used = new Set(findTerms(text).map(({ term }) => term));
  return glossary.filter((term) => used.has(term));
};
