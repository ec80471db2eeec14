import { nearestWord } from './nearestWord.ts';
import { type Kind, kindNames } from './records.ts';
import { askedWords, wholeName } from './words.ts';

/** What the index keeps of a record. */
export interface Found {
  /** Under the folder that the site is served from. */
  readonly url: string;
  /** As `indexPages.ts` wrote it. */
  readonly raw_url: string;
  readonly sub_results: readonly { readonly title: string; readonly url: string }[];
}
export interface Hit {
  readonly id: string;
  readonly score: number;
  readonly data: () => Promise<Found>;
}
/** The part of the index's own script that is used. */
export interface Index {
  readonly search: (words: string | null, options?: { readonly filters: { readonly kind: Kind } }) => Promise<{ readonly results: readonly Hit[] }>;
}
export interface Searcher {
  readonly index: Index;
  readonly kindOf: ReadonlyMap<string, Kind>;
  readonly namingWords: () => Promise<readonly string[]>;
}
export interface Answer {
  readonly hits: readonly { readonly hit: Hit; readonly kind: Kind }[];
  /** Words that nothing is called by, each with the one that was looked for in its place. */
  readonly taken: readonly { readonly typed: string; readonly as: string }[];
  readonly unknown: readonly string[];
}

/** Who asks for a number gets the calculator first if it fits at least this well, as a share of the best score. */
const fitShare = 0.6;
const asksForNumber = /\bhow (much|many|long|fast|far|dry)\b/i;
const asksForMeaning = /^(what(s| is| are| does)?|meaning of|define)\b/i;
/** How much a find counts by what it is. */
const kindWeight: Readonly<Record<Kind, number>> = { calculator: 1, guide: 1, term: 0.5, table: 0.4, sheet: 0.9, page: 0.7, source: 0.3 };
/** What is asked for by its whole name and nothing else. */
const namedWeight = 0.8;
/** What the index is told about ranking: words stand in a record once, so its length says little; a word that only begins like the one asked for is worth less. */
export const ranking = { pageLength: 0.3, termSimilarity: 3 };

export async function openSearcher(index: Index, namingWords: () => Promise<readonly string[]>): Promise<Searcher> {
  const kindOf = new Map<string, Kind>();
  for (const kind of Object.keys(kindNames) as readonly Kind[]) {
    for (const { id } of (await index.search(null, { filters: { kind } })).results) kindOf.set(id, kind);
  }
  return { index, kindOf, namingWords };
}

/** The word to look for: itself if it stands anywhere or begins a known word, otherwise the nearest known one. */
async function understood({ index, namingWords }: Searcher, word: string): Promise<string | undefined> {
  if ((await index.search(`"${word}"`)).results.length > 0) return word;
  const known = await namingWords();
  return known.some((each) => each.startsWith(word)) ? word : nearestWord(word, known);
}

/** What a question is the whole name of. */
const namedBy = async ({ index }: Searcher, question: string): Promise<ReadonlySet<string>> =>
  new Set((await index.search(`"${wholeName(question)}"`)).results.map(({ id }) => id));

/** Everything that fits a question, best first; sources last. */
export async function ask(searcher: Searcher, question: string): Promise<Answer> {
  const asked = askedWords(question);
  const taken: { typed: string; as: string }[] = [];
  const unknown: string[] = [];
  const fits = new Map<string, { hit: Hit; score: number; words: number }>();
  for (const typed of asked) {
    const word = await understood(searcher, typed);
    if (word === undefined) {
      unknown.push(typed);
      continue;
    }
    if (word !== typed) taken.push({ typed, as: word });
    for (const hit of (await searcher.index.search(word)).results) {
      const { score, words } = fits.get(hit.id) ?? { score: 0, words: 0 };
      fits.set(hit.id, { hit, score: score + hit.score, words: words + 1 });
    }
  }
  const named = await namedBy(searcher, question);
  const scored = [...fits.values()].map(({ hit, score, words }) => {
    const kind = searcher.kindOf.get(hit.id) ?? 'page';
    const isNamed = named.has(hit.id);
    return { hit, kind, isNamed, score: (score * Math.max(kindWeight[kind], isNamed ? namedWeight : 0) * words) / asked.length };
  });
  const best = Math.max(0, ...scored.map(({ score }) => score));
  const rank = ({ kind, score, isNamed }: (typeof scored)[number]): number => {
    if (kind === 'source') return 2;
    if (isNamed && (kind === 'calculator' || (kind === 'term' && asksForMeaning.test(question)))) return -1;
    return asksForNumber.test(question) && kind === 'calculator' && score >= fitShare * best ? 0 : 1;
  };
  const ranked = scored.toSorted((one, other) => rank(one) - rank(other) || other.score - one.score);
  // What has the very name stands second at the latest.
  const late = ranked.filter(({ isNamed }, at) => isNamed && at > 1);
  const hits = [...ranked.slice(0, 1), ...late, ...ranked.slice(1).filter((each) => !late.includes(each))].map(({ hit, kind }) => ({ hit, kind }));
  return { hits, taken, unknown };
}
