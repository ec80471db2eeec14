import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { HTMLElement } from 'node-html-parser';
import asked from '../../content/search/asked.json' with { type: 'json' };
import { pack } from '../search/packed.ts';
import { bestFit, citationsFile, type Line, type SearchIndex, type SearchRecord } from '../search/records.ts';
import { askedWords, pairsIn, tellingStems, tellingTokens, wholeName } from '../search/words.ts';
import { searchRecords } from './searchRecords.ts';

/** How people ask for a page, in their own words. */
const askedBy: Readonly<Record<string, readonly string[]>> = asked;

/** How much a word tells of a record by where it stands. */
const fieldWeights = { title: 15, question: 5, words: 7, asked: 6, heading: 3, lead: 3, text: 4, choices: 0.5 };
/** Of a name longer than this each word tells less. */
const shortName = 2;
/** What makes half of the best fit. */
const halfFit = 24;
/** How often a word must stand among names, or in a text of middling length, to count half of what it can there. */
const halfNames = 0.5;
const halfText = 2.5;
/** A word that stands only in running text leads to the records that use it most: to lead to all that ever use it would tell none of them apart. */
const weakFit = 2;
const mostOfWeak = 4;
/** A word leads to the places on a page that use it most, but not for standing there once or twice. */
const mostPlaces = 2;
const leastUses = 3;
const headingUses = 10;

const counted = (words: readonly string[]): ReadonlyMap<string, number> =>
  new Map([...Map.groupBy(words, (word) => word)].map(([word, { length }]) => [word, length]));

/** How well each word of a record fits it, from 1 to `bestFit`. */
function fitsOf(record: SearchRecord, middleLength: number): ReadonlyMap<string, number> {
  const weights = new Map<string, number>();
  const add = (words: Iterable<string>, weight: number): void => {
    for (const word of new Set(words)) weights.set(word, (weights.get(word) ?? 0) + weight);
  };
  const addCounted = (words: readonly string[], weight: number, half: number): void => {
    for (const [word, count] of counted(words)) add([word], (weight * count) / (count + half));
  };
  // One phrase that has the word counts in full.
  const addPhrases = (phrases: readonly (readonly string[])[], weight: number): void =>
    addCounted(
      phrases.flatMap((phrase) => [...new Set(phrase)]),
      weight * (1 + halfNames),
      halfNames,
    );
  // A source is found by its author and its year, each by itself: pairs of them were a tenth of the index.
  const pairsOf = (words: readonly string[]): readonly string[] => (record.kind === 'source' ? [] : pairsIn(words));
  const addNames = (names: readonly string[], weight: number): void => {
    const phrases = names.map(tellingStems);
    addPhrases(phrases, weight);
    add(phrases.flatMap(pairsOf), weight);
  };
  const title = tellingStems(record.title);
  add(title, (fieldWeights.title * shortName) / Math.max(shortName, title.length));
  add(pairsOf(title), fieldWeights.title);
  addNames([record.question ?? ''], fieldWeights.question);
  addNames(record.words, fieldWeights.words);
  addPhrases((askedBy[record.url] ?? []).map(tellingStems), fieldWeights.asked);
  if (record.kind !== 'source') {
    const headings = record.parts.map((part) => part.title);
    const text = record.parts.flatMap((part) => tellingStems(part.text));
    add(tellingStems(record.lead), fieldWeights.lead);
    add(tellingStems(record.choices ?? ''), fieldWeights.choices);
    addNames(headings, fieldWeights.heading);
    addCounted(text, fieldWeights.text, halfText * Math.max(1, text.length / middleLength));
  }
  return new Map([
    ...[...weights].map(([word, weight]) => [word, Math.max(1, Math.round((bestFit * weight) / (weight + halfFit)))] as const),
    ...record.names.map((name) => [wholeName(name), bestFit] as const),
  ]);
}

/** For each word of a record the places that use it most, by their number. */
function placesOf({ parts }: SearchRecord): ReadonlyMap<string, readonly number[]> {
  const uses = parts
    .filter(({ anchor }) => anchor !== undefined)
    .flatMap(({ title, text }, place) => {
      const words = [...tellingStems(title).flatMap((word) => Array<string>(headingUses).fill(word)), ...tellingStems(text)];
      return [...counted(words)].map(([word, count]) => ({ word, place, count }));
    })
    .filter(({ count }) => count >= leastUses);
  return new Map(
    [...Map.groupBy(uses, ({ word }) => word)].map(([word, users]) => [
      word,
      users
        .toSorted((one, other) => other.count - one.count)
        .slice(0, mostPlaces)
        .map(({ place }) => place)
        .sort((one, other) => one - other),
    ]),
  );
}

/** Of the records that a word leads to, those that it is no mere mention in; mentions where there are few others. */
function led(list: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] {
  const weak = list.filter(([, fit]) => fit <= weakFit).toSorted(([, one], [, other]) => other - one);
  const left = new Set(weak.slice(Math.max(0, mostOfWeak - (list.length - weak.length))));
  return list.filter((each) => !left.has(each));
}

const lineOf = ({ url, kind, title, lead, question, parts }: SearchRecord): Line => {
  const places = parts.flatMap((part): readonly (readonly [string, string])[] => (part.anchor === undefined ? [] : [[part.anchor, part.title]]));
  return {
    url,
    kind,
    title,
    lead: kind === 'source' ? '' : lead,
    ...(question === undefined ? {} : { question }),
    ...(kind === 'guide' ? { places } : {}),
  };
};

/** The index of everything that can be found. */
export function buildIndex(records: readonly SearchRecord[]): SearchIndex {
  const lengths = records.map(({ parts }) => parts.reduce((sum, { text }) => sum + tellingStems(text).length, 0)).filter((length) => length > 0);
  const middleLength = lengths.reduce((sum, length) => sum + length, 0) / lengths.length;
  const words = new Map<string, [number, number][]>();
  const places = new Map<string, [number, number][]>();
  const append = (lists: Map<string, [number, number][]>, word: string, line: number, mark: number): void => {
    const list = lists.get(word);
    if (list) list.push([line, mark]);
    else lists.set(word, [[line, mark]]);
  };
  records.forEach((record, line) => {
    for (const [word, fit] of fitsOf(record, middleLength)) append(words, word, line, fit);
    if (record.kind !== 'guide') return;
    for (const [word, numbers] of placesOf(record)) for (const place of numbers) append(places, word, line, place);
  });
  const names = records
    .filter(({ kind }) => kind !== 'source')
    .flatMap((record) => [record.title, record.question ?? '', ...record.words, ...record.parts.map(({ title }) => title)]);
  return {
    lines: records.map(lineOf),
    asked: records.flatMap(({ url }, line) =>
      (askedBy[url] ?? []).map(
        (question) =>
          [
            line,
            askedWords(question)
              .map(({ stem }) => stem)
              .join(' '),
          ] as const,
      ),
    ),
    words: pack(new Map([...words].map(([word, list]) => [word, led(list)]))),
    places: pack(places),
    naming: [...new Set(names.flatMap(tellingTokens))].filter((word) => !/\d/.test(word)).sort(),
  };
}

/** Writes the search index into the built site; returns the number of entries. */
export function indexPages(root: string, pages: ReadonlyMap<string, HTMLElement>): number {
  const records = searchRecords(pages);
  const folder = join(root, 'search');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'index.json'), JSON.stringify(buildIndex(records)));
  for (const [file, sources] of Map.groupBy(
    records.filter(({ kind }) => kind === 'source'),
    ({ url }) => citationsFile(url),
  )) {
    writeFileSync(join(root, file), JSON.stringify(Object.fromEntries(sources.map(({ url, lead }) => [url, lead]))));
  }
  return records.length;
}
