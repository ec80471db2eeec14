import { type Danger, dangerIn, dangerTokens } from './dangers.ts';
import { nearestWord } from './nearestWord.ts';
import { anyoneToAsk, whomToAsk } from './notHere.ts';
import { unpack } from './packed.ts';
import { bestFit, type Line, type SearchIndex } from './records.ts';
import { askedWords, isJoined, knownTokens, mended, pairsIn, stemOf, type Word, wholeName } from './words.ts';

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
  /** Whom to ask where no page here answers. */
  readonly elsewhere: string | undefined;
}
export type Searcher = (question: string) => Answer;

/** Who asks for a number gets the calculator first if it fits at least this well, as a share of the best score. */
const fitShare = 0.75;
const asksForNumber = /\bhow (much|many|long|fast|far|dry|deep)\b/i;
const asksForMeaning = /^(what(s| is| are| does)?|meaning of|define)\b/i;
const asksForTable = /\b(tables?|levels|limits|values|list)\b/i;
/** What people call a sheet by. */
const sheetWord = stemOf('form');
/** How much a find counts by what it is; by its whole name, or where its kind is asked for, it counts at least as much as that. */
const kindWeight: Readonly<Record<Line['kind'], number>> = { calculator: 1, guide: 1, term: 0.6, table: 0.4, sheet: 0.9, page: 0.7, source: 0.3 };
const namedWeight = 0.8;
const wantedWeight = 1.4;
/** How much more a page counts that has more of the question's words: one loose word must not win over the whole question. */
const wholeness = 2;
/** What two words side by side add, and a question like those that people ask for a page with. */
const pairShare = 0.4;
const likeShare = 0.5;
/** Of a name of several words the parts tell less than the whole. */
const partShare = 0.3;
/** A word that is only begun tells less than a whole one; two letters are a word of their own. */
const begunShare = 0.6;
const shortestBegun = 3;
/** No page answers a question that the best one has so little of. */
const leastAnswered = 0.125;
/** Nor one of which this share or more is words that stand on no page: there is a schedule here, but none of a rodeo. */
const leastUnknown = 0.5;
const mostInside = 2;

/** Places on a page that must come first, the caution that is the answer before them. */
const withBox = (danger: Danger | undefined, inside: Hit['inside']): Hit['inside'] =>
  danger?.box ? [[danger.box.anchor, danger.box.title] as const, ...inside].slice(0, mostInside) : inside;

interface Sought {
  readonly typed: string;
  /** How well it fits each line that has it, from 0 to 1. */
  readonly fits: ReadonlyMap<number, number>;
  readonly places: ReadonlyMap<number, readonly number[]>;
  /** What the word tells: the rarer, the more. */
  readonly weight: number;
}

/** Searches an index that has been fetched. */
export function openSearcher(index: SearchIndex): Searcher {
  const { lines } = index;
  const words = unpack(index.words);
  const places = unpack(index.places);
  const isSource = (line: number): boolean => lines[line]?.kind === 'source';
  const pages = lines.filter(({ kind }) => kind !== 'source').length;
  const single = words.words.filter((word) => /^\p{L}+$/u.test(word));
  const spelled = [...new Set([...index.naming, ...knownTokens, ...dangerTokens])];
  const known = new Set([...single, ...spelled.map(stemOf)]);
  const beginning = (start: string): readonly string[] => (start.length < shortestBegun ? [] : single.filter((word) => word.startsWith(start)));

  /** What a word tells by the lines that have it. */
  const weightOf = (users: Iterable<number> = []): number => Math.log(1 + pages / Math.max(1, [...users].filter((line) => !isSource(line)).length));

  /** Where any of some words stands. */
  const seek = (typed: string, any: readonly string[], { fit = 1, weight = 1 } = {}): Sought => {
    const fits = new Map<number, number>();
    const inside = new Map<number, number[]>();
    for (const word of any) {
      for (const [line, mark] of words.get(word) ?? []) fits.set(line, Math.max(fits.get(line) ?? 0, (fit * mark) / bestFit));
      for (const [line, place] of places.get(word) ?? []) inside.set(line, [...(inside.get(line) ?? []), place]);
    }
    return { typed, fits, places: inside, weight: weight * weightOf(fits.keys()) };
  };

  const seekWord = ({ typed, stem }: Word, at: number, all: readonly Word[]): Sought => {
    const isPart = !isJoined(stem) && all.some((other) => other.typed === typed && isJoined(other.stem));
    if (words.has(stem)) return seek(typed, [stem], { weight: isPart ? partShare : 1 });
    return seek(typed, at === all.length - 1 ? beginning(stem) : [], { fit: begunShare });
  };

  const weightOfStem = (stem: string): number => weightOf(words.get(stem)?.map(([user]) => user));
  const questions = index.asked.map(([line, stems]) => ({ line, stems: stems.split(' ') }));
  /** How much each page's likest question has in common with the one that is asked, from 0 to 1. */
  const likenessTo = (asked: readonly string[]): ReadonlyMap<number, number> => {
    const weights = new Map<string, number>();
    const weigh = (stems: readonly string[]): number =>
      stems.reduce((sum, stem) => {
        const weight = weights.get(stem) ?? weightOfStem(stem);
        weights.set(stem, weight);
        return sum + weight;
      }, 0);
    const all = weigh(asked);
    const likest = new Map<number, number>();
    for (const { line, stems } of questions) {
      const common = weigh(stems.filter((stem) => asked.includes(stem)));
      if (common > 0) likest.set(line, Math.max(likest.get(line) ?? 0, common / Math.sqrt(all * weigh(stems))));
    }
    return likest;
  };

  /** The places on a page that have the most of what is asked. */
  const insideOf = (line: number, sought: readonly Sought[]): Hit['inside'] => {
    const worth = new Map<number, number>();
    for (const { places: byLine, weight } of sought) {
      for (const place of byLine.get(line) ?? []) worth.set(place, (worth.get(place) ?? 0) + weight);
    }
    return [...worth]
      .sort(([, one], [, other]) => other - one)
      .slice(0, mostInside)
      .flatMap(([place]) => lines[line]?.places?.slice(place, place + 1) ?? []);
  };

  return (question) => {
    const taken: { typed: string; as: string }[] = [];
    const text = mended(question, (token, isLast) => {
      if (known.has(stemOf(token)) || (isLast && beginning(token).length > 0)) return token;
      const near = nearestWord(token, spelled);
      if (near !== undefined) taken.push({ typed: token, as: near });
      return near ?? token;
    });
    const asked = askedWords(text);
    const sought = asked.map(seekWord);
    const pairs = pairsIn(asked.map(({ stem }) => stem)).map((pair) => seek(pair, [pair]));
    const named = seek(text, [wholeName(text)]).fits;
    const total = (list: readonly Sought[], share: (each: Sought) => number): number =>
      list.reduce((sum, each) => sum + each.weight * share(each), 0);
    const all = total(sought, () => 1);

    const isWanted = ({ kind }: Line): boolean =>
      (kind === 'table' && asksForTable.test(text)) ||
      (kind === 'term' && asksForMeaning.test(text)) ||
      (kind === 'sheet' && asked.some(({ stem }) => stem === sheetWord));
    const danger = dangerIn(text);
    const cautioned = lines.flatMap(({ url }, at) => (url === danger?.page ? [at] : []));
    const likeness = likenessTo(asked.map(({ stem }) => stem));
    const scored = [...new Set([...sought.flatMap(({ fits }) => [...fits.keys()]), ...cautioned])].flatMap((at) => {
      const line = lines[at];
      if (!line) return [];
      const had = total(sought, ({ fits }) => (fits.has(at) ? 1 : 0)) / all;
      const share = total(sought, ({ fits }) => fits.get(at) ?? 0) / all;
      const joined = total(pairs, ({ fits }) => fits.get(at) ?? 0) / all;
      const isNamed = named.has(at);
      const weight = Math.max(kindWeight[line.kind], isNamed ? namedWeight : 0, isWanted(line) ? wantedWeight : 0);
      const fit = share + pairShare * joined + likeShare * (likeness.get(at) ?? 0);
      return [{ at, line, isNamed, answers: fit * had, score: weight * fit * had ** wholeness }];
    });

    const best = Math.max(0, ...scored.map(({ score }) => score));
    const rank = ({ line: { kind, url }, score, isNamed }: (typeof scored)[number]): number => {
      if (kind === 'source') return 3;
      if (isNamed && (kind === 'calculator' || (kind === 'term' && asksForMeaning.test(text)))) return 0;
      if (url === danger?.page && !asksForTable.test(text)) return 1;
      return asksForNumber.test(text) && kind === 'calculator' && score >= fitShare * best ? 1.5 : 2;
    };
    const ranked = scored.toSorted((one, other) => rank(one) - rank(other) || other.score - one.score);
    // What has the very name stands second at the latest.
    const late = ranked.filter(({ isNamed }, at) => isNamed && at > 1);
    const order = [...ranked.slice(0, 1), ...late, ...ranked.slice(1).filter((each) => !late.includes(each))];
    const answered = Math.max(0, ...scored.filter(({ line }) => line.kind !== 'source').map(({ answers }) => answers));
    const unknown = sought.filter(({ fits }) => fits.size === 0);
    // A word that is known by several others tells no more for it.
    const telling = sought.filter(({ typed, weight }) => !sought.some((other) => other.typed === typed && other.weight > weight));
    const told = total(telling, () => 1);
    const isElsewhere = answered < leastAnswered || total(unknown, () => 1) >= leastUnknown * told;
    return {
      hits: order.map(({ at, line }) => ({ ...line, inside: cautioned.includes(at) ? withBox(danger, insideOf(at, sought)) : insideOf(at, sought) })),
      taken,
      unknown: unknown.map(({ typed }) => typed),
      elsewhere: danger === undefined ? (whomToAsk(question) ?? (isElsewhere ? anyoneToAsk : undefined)) : undefined,
    };
  };
}
