import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { bestFit, type Line, type SearchIndex, type SearchRecord } from '../search/records.ts';
import { pairsIn, tellingStems, tellingTokens, wholeName } from '../search/words.ts';
import { searchRecords } from './searchRecords.ts';

export const tune = { halfFit: 14, halfCount: 2, shortName: 2 };
/** How much a word tells of a record by where it stands. */
export const fieldWeights = { title: 20, question: 5, words: 7, heading: 3, lead: 3, text: 4, choices: 0.5 };
/** Names and running text together that make half of the best fit. */

/** How often a word must stand in a text of middling length to count half of what the text can. */

/** A word leads to the places that use it most. */
const mostPlacesOfWord = 2;

/** A word tells less of a name that is longer. */


const counted = (words: readonly string[]): ReadonlyMap<string, number> =>
  new Map([...Map.groupBy(words, (word) => word)].map(([word, { length }]) => [word, length]));

/** How well each word of a record fits it, from 1 to `bestFit`. */
function fitsOf(record: SearchRecord, middleLength: number): ReadonlyMap<string, number> {
  const raw = new Map<string, number>();
  const add = (words: Iterable<string>, weight: number): void => {
    for (const word of new Set(words)) raw.set(word, (raw.get(word) ?? 0) + weight);
  };
  const addNames = (names: readonly string[], weight: number): void => {
    const phrases = names.map(tellingStems);
    for (const [word, count] of counted(phrases.flatMap((phrase) => [...new Set(phrase)]))) add([word], (weight * count * 1.5) / (count + 0.5));
    add(phrases.flatMap(pairsIn), weight);
  };
  const title = tellingStems(record.title);
  add(title, (fieldWeights.title * tune.shortName) / Math.max(tune.shortName, title.length));
  add(pairsIn(title), fieldWeights.title);
  addNames([record.question ?? ''], fieldWeights.question);
  addNames(record.words, fieldWeights.words);
  if (record.kind !== 'source') {
    add(tellingStems(record.lead), fieldWeights.lead);
    add(tellingStems(record.choices ?? ''), fieldWeights.choices);
    addNames(
      record.parts.map(({ title: heading }) => heading),
      fieldWeights.heading,
    );
    const text = record.parts.flatMap((part) => tellingStems(part.text));
    const half = tune.halfCount * Math.max(1, text.length / middleLength);
    for (const [word, count] of counted(text)) add([word], (fieldWeights.text * count) / (count + half));
  }
  const fits = [...raw].map(([word, weight]) => [word, Math.max(1, Math.round((bestFit * weight) / (weight + tune.halfFit)))] as const);
  return new Map([
    ...fits,
    // What a page is looked for by, if that is all that is asked, tells more than the same words in other company.
    ...record.words.map((phrase) => [wholeName(phrase), Math.round(bestFit / 2)] as const),
    ...record.names.map((name) => [wholeName(name), bestFit] as const),
  ]);
}

/** The places of a record that use a word most, by their number. */
function placesOf({ parts }: SearchRecord): ReadonlyMap<string, readonly number[]> {
  const uses = parts
    .filter(({ anchor }) => anchor !== undefined)
    .flatMap(({ title, text }, place) => {
      const headed = new Set(tellingStems(title));
      return [...counted([...headed, ...tellingStems(text)])].map(([word, count]) => ({ word, place, count: headed.has(word) ? 10 * count : count }));
    });
  return new Map(
    [...Map.groupBy(uses, ({ word }) => word)].map(([word, users]) => [
      word,
      users
        .toSorted((one, other) => other.count - one.count)
        .slice(0, mostPlacesOfWord)
        .map(({ place }) => place),
    ]),
  );
}

const lineOf = ({ url, kind, title, lead, question, parts }: SearchRecord): Line => {
  const places =
    kind === 'guide' ? parts.flatMap((part): readonly [string, string][] => (part.anchor === undefined ? [] : [[part.anchor, part.title]])) : [];
  return {
    url,
    kind,
    title,
    lead: kind === 'source' ? '' : lead,
    ...(question === undefined ? {} : { question }),
    ...(places.length === 0 ? {} : { places }),
  };
};

const sorted = (lists: ReadonlyMap<string, number[]>): Readonly<Record<string, readonly number[]>> =>
  Object.fromEntries([...lists].sort(([one], [other]) => (one < other ? -1 : 1)));

/** The index of everything that can be found. */
export function buildIndex(records: readonly SearchRecord[]): SearchIndex {
  const lengths = records.map(({ parts }) => parts.reduce((sum, { text }) => sum + tellingStems(text).length, 0)).filter((length) => length > 0);
  const middleLength = lengths.reduce((sum, length) => sum + length, 0) / lengths.length;
  const words = new Map<string, number[]>();
  const places = new Map<string, number[]>();
  const append = (lists: Map<string, number[]>, word: string, ...numbers: readonly number[]): void => {
    lists.set(word, [...(lists.get(word) ?? []), ...numbers]);
  };
  records.forEach((record, line) => {
    for (const [word, fit] of fitsOf(record, middleLength)) append(words, word, line, fit);
    if (record.kind !== 'guide') return;
    for (const [word, numbers] of placesOf(record)) for (const place of numbers) append(places, word, line, place);
  });
  const named = records
    .filter(({ kind }) => kind !== 'source')
    .flatMap((record) => [record.title, record.question ?? '', ...record.words, ...record.parts.map(({ title }) => title)]);
  return {
    lines: records.map(lineOf),
    words: sorted(words),
    places: sorted(places),
    naming: [...new Set(named.flatMap(tellingTokens))].filter((word) => !/\d/.test(word)).sort(),
  };
}

/** Writes the search index into the built site; returns the number of entries. */
export function indexPages(root: string): number {
  const records = searchRecords(root);
  const folder = join(root, 'search');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'index.json'), JSON.stringify(buildIndex(records)));
  // Whole citations are many and seldom wanted.
  const citations = records.filter(({ kind }) => kind === 'source').map(({ url, lead }) => [url, lead]);
  writeFileSync(join(folder, 'citations.json'), JSON.stringify(Object.fromEntries(citations)));
  return records.length;
}
