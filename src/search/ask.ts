import { dangerPage } from './dangers.ts';
import { nearestWord } from './nearestWord.ts';
import { bestFit, type Line, type SearchIndex } from './records.ts';
import { askedWords, knownTokens, mended, pairsIn, stemOf, wholeName } from './words.ts';

export interface Hit extends Line {
  /** The places on its page that fit best: anchor and heading. */
  readonly inside: readonly (readonly [string, string])[];
}
export interface Answer {
  /** Everything that fits, best first; sources last. */
  readonly hits: readonly Hit[];
  /** Words that nothing is called by, each with the one that was looked for in its place. */
  readonly taken: readonly { readonly typed: string; readonly as: string }[];
  readonly unknown: readonly string[];
  /** How much of the question the best page answers, from 0 to 1. */
  readonly share: number;
}

/** Who asks for a number gets the calculator first if it fits at least this well, as a share of the best score. */
export const tune = { fitShare: 0.75, wholeness: 1.5, wholeShare: 0.2, pairShare: 0.4, partShare: 0.3, idf: 1, namedWeight: 0.8, askedForWeight: 1.1, calcAll: 1 };
const asksForNumber = /\bhow (much|many|long|fast|far|dry|deep)\b/i;
const asksForMeaning = /^(what(s| is| are| does)?|meaning of|define)\b/i;
const asksForTable = /\b(tables?|levels|limits|values|list)\b/i;
/** How much a find counts by what it is. */
export const kindWeight: Record<Line['kind'], number> = { calculator: 1, guide: 1, term: 0.5, table: 0.4, sheet: 0.9, page: 0.7, source: 0.3 };
/** What is asked for by its whole name and nothing else. */


/** How much more a page counts that has more of the question's words: one loose word must not win over the whole question. */

/** What two words side by side add. */

const shortestBegun = 3;
/** A word that is only begun tells less than a whole one. */
const begunShare = 0.6;
const mostPlaces = 2;

interface Sought {
  readonly typed: string;
  /** Fit of each line that has it. */
  readonly fits: ReadonlyMap<number, number>;
  readonly places: ReadonlyMap<number, readonly number[]>;
  /** What the word tells: the rarer, the more. */
  readonly weight: number;
}

/** Pairs of an index's list, one after the other. */
const pairsOf = (list: readonly number[] = []): readonly (readonly [number, number])[] =>
  list.flatMap((value, at) => {
    const next = list[at + 1];
    return at % 2 === 0 && next !== undefined ? [[value, next] as const] : [];
  });

export type Searcher = (question: string) => Answer;
export function openSearcher(index: SearchIndex): Searcher {
  const isSource = index.lines.map(({ kind }) => kind === 'source');
  const pages = isSource.filter((source) => !source).length;
  const stems = Object.keys(index.words).filter((word) => /^\p{L}+$/u.test(word));
  const known = new Set([...stems, ...knownTokens.map(stemOf)]);
  const spelled = [...new Set([...index.naming, ...knownTokens])];
  const isBegun = (word: string): boolean => word.length >= shortestBegun && stems.some((each) => each.startsWith(word));

  const seek = (typed: string, found: readonly string[], share = 1, share2 = 1): Sought => {
    const fits = new Map<number, number>();
    const places = new Map<number, number[]>();
    for (const stem of found) {
      for (const [line, fit] of pairsOf(index.words[stem])) fits.set(line, Math.max(fits.get(line) ?? 0, (share * fit) / bestFit));
      for (const [line, place] of pairsOf(index.places[stem])) places.set(line, [...(places.get(line) ?? []), place]);
    }
    const users = [...fits.keys()].filter((line) => !isSource[line]).length;
    return { typed, fits, places, weight: share2 * Math.log(1 + pages / Math.max(1, users)) ** tune.idf };
  };

  return (question) => {
    const taken: { typed: string; as: string }[] = [];
    const text = mended(question, (token, isLast) => {
      if (known.has(stemOf(token)) || (isLast && isBegun(token))) return token;
      const near = nearestWord(token, spelled);
      if (near !== undefined) taken.push({ typed: token, as: near });
      return near ?? token;
    });
    const asked = askedWords(text);
    const sought = asked.map(({ typed, stem }, at): Sought => {
      if (Object.hasOwn(index.words, stem)) return seek(typed, [stem], 1, asked.some((w)=>w.typed===typed&&w.stem.includes('_'))&&!stem.includes('_') ? tune.partShare : 1);
      const isLast = at === asked.length - 1;
      return isLast && isBegun(stem)
        ? seek(
            typed,
            stems.filter((each) => each.startsWith(stem)),
            begunShare,
          )
        : seek(typed, []);
    });
    const unknown = sought.filter(({ fits }) => fits.size === 0).map(({ typed }) => typed);
    const wantsSheet = asked.some(({ stem }) => stem === 'form');
    const all = sought.reduce((sum, { weight }) => sum + weight, 0);
    const together = pairsIn(asked.map(({ stem }) => stem)).map((pair) => seek(pair, [pair]));
    const whole = seek(text, [wholeName(text)]).fits;
    const scored = [...new Set(sought.flatMap(({ fits }) => [...fits.keys()]))].flatMap((at) => {
      const line = index.lines[at];
      if (!line) return [];
      const having = sought.filter(({ fits }) => fits.has(at));
      const fit = having.reduce((sum, { weight, fits }) => sum + weight * (fits.get(at) ?? 0), 0) / all;
      const joined = together.reduce((sum, { weight, fits }) => sum + weight * (fits.get(at) ?? 0), 0) / all;
      const had = having.reduce((sum, { weight }) => sum + weight, 0) / all;
      const isNamed = whole.get(at) === 1;
      const isWanted = (line.kind === 'sheet' && wantsSheet) || (line.kind === 'table' && asksForTable.test(question)) || (line.kind === 'term' && asksForMeaning.test(question));
      const weight = Math.max(kindWeight[line.kind], isNamed ? tune.namedWeight : 0, isWanted ? tune.askedForWeight : 0);
      return [{ at, line, isNamed, share: fit, score: weight * (fit + tune.pairShare * joined + (isNamed ? 0 : tune.wholeShare * (whole.get(at) ?? 0))) * had ** tune.wholeness }];
    });
    const best = Math.max(0, ...scored.map(({ score }) => score));
    const danger = dangerPage(text);
    const rank = ({ line: { kind, url }, score, isNamed }: (typeof scored)[number]): number => {
      if (kind === 'source') return 2;
      if (isNamed && (kind === 'calculator' || (kind === 'term' && asksForMeaning.test(question)))) return -1;
      if (url === danger) return asksForTable.test(question) ? 1 : -0.5;
      return asksForNumber.test(question) && kind === 'calculator' && score >= tune.fitShare * best ? 0 : 1;
    };
    const ranked = scored.toSorted((one, other) => rank(one) - rank(other) || other.score - one.score);
    // What has the very name stands second at the latest.
    const late = ranked.filter(({ isNamed }, at) => isNamed && at > 1);
    const order = [...ranked.slice(0, 1), ...late, ...ranked.slice(1).filter((each) => !late.includes(each))];
    const insideOf = (at: number, { places = [] }: Line): Hit['inside'] => {
      const worth = new Map<number, number>();
      for (const { places: byLine, weight } of sought) {
        for (const place of byLine.get(at) ?? []) worth.set(place, (worth.get(place) ?? 0) + weight);
      }
      return [...worth]
        .sort(([, one], [, other]) => other - one)
        .slice(0, mostPlaces)
        .flatMap(([place]) => places[place] ?? [])
        .map((place) => place as never);
    };
    return {
      hits: order.map(({ at, line }) => ({ ...line, inside: insideOf(at, line) })),
      taken,
      unknown,
      share: Math.max(0, ...scored.filter(({ line }) => line.kind !== 'source').map(({ share }) => share)),
    };
  };
}
