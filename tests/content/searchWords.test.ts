import { expect, test } from 'vitest';
import { lettersApart } from '../../calculators/kit/lettersApart.ts';
import judged from '../../content/search/judged.json' with { type: 'json' };
import synonyms from '../../content/search/synonyms.json' with { type: 'json' };
import { buildIndex } from '../../src/integrations/indexPages.ts';
import { openSearcher } from '../../src/search/ask.ts';
import { speaksOfDespair } from '../../src/search/despair.ts';
import { nearestWord } from '../../src/search/nearestWord.ts';
import { anyoneToAsk, whomToAsk } from '../../src/search/notHere.ts';
import { highestMark, pack, unpack } from '../../src/search/packed.ts';
import type { SearchRecord } from '../../src/search/records.ts';
import { askedWords, rawTokens, stemOf, wordsOf } from '../../src/search/words.ts';

const entries = Object.entries(synonyms);
const key = (text: string): string => text.toLowerCase();
/** Endings apart, two words are one to the search. */
const ending = (text: string): string => rawTokens(text).map(stemOf).join(' ');
const stems = (text: string): readonly string[] => wordsOf(text).map(({ stem }) => stem);
const typed = (question: string): readonly string[] => askedWords(question).map((word) => word.stem);

test('each word has one place among the other words', () => {
  const places = new Map<string, string[]>();
  for (const [canonical, others] of entries) {
    for (const word of new Set([canonical, ...others].map(ending))) places.set(word, [...(places.get(word) ?? []), canonical]);
  }
  expect([...places].filter(([, canonicals]) => canonicals.length > 1)).toEqual([]);
});

test('a word and its other words ask for the same', () => {
  for (const [canonical, others] of entries) {
    for (const other of others) expect(stems(other), other).toEqual(stems(canonical));
  }
});

test('no question is judged twice in one part, and no unseen one among those that are tuned on', () => {
  const parts = Object.entries(judged).map(([part, queries]) => ({ isUnseen: /heldOut$/i.test(part), questions: Object.keys(queries).map(key) }));
  for (const { questions } of parts) expect(questions.filter((question, at) => questions.indexOf(question) !== at)).toEqual([]);
  const seen = new Set(parts.filter(({ isUnseen }) => !isUnseen).flatMap(({ questions }) => questions));
  expect(parts.filter(({ isUnseen }) => isUnseen).flatMap(({ questions }) => questions.filter((question) => seen.has(question)))).toEqual([]);
});

test('a number is the same with and without its comma, a question without the words that say nothing', () => {
  expect(typed('27,154 gallons?')).toEqual(typed('27154 gal'));
  expect(typed('How much hay do I need?')).toEqual(['hay']);
  expect(typed('How much hay for 45 cows?')).toEqual(typed('hay for cows'));
  expect(typed('How much is it?')).not.toEqual([]);
});

test.each([
  ['bermuda stubble', 'bermudagrass stubble'],
  ['bermuda grass stubble', 'bermudagrass stubble'],
  ['coastal bermuda stubble', 'bermudagrass stubble'],
  ['bahia grass height', 'bahiagrass height'],
  ['orchard grass height', 'orchardgrass height'],
  ['smooth brome grass', 'brome'],
  ['switch grass', 'switchgrass'],
  ['rye grass', 'ryegrass'],
  ['crab grass', 'crabgrass'],
  ['sudan grass', 'sudangrass'],
  ['johnson grass', 'johnsongrass'],
  ['little bluestem', 'big bluestem'],
])('a grass is the same in two words as in one: %s', (asked, as) => {
  expect(typed(asked)).toEqual(typed(as));
});

test('an orchard is not looked for here, orchard grass is', () => {
  expect(whomToAsk('pruning an apple orchard')).toBeDefined();
  expect(whomToAsk('orchard grass height')).toBeUndefined();
});

// The usual examples for edit distance, in textbooks and encyclopedias; from memory.
test.each([
  ['kitten', 'sitting', 3],
  ['saturday', 'sunday', 3],
  ['ca', 'abc', 3],
  ['acre', 'acer', 1],
  ['', 'hay', 3],
])('%s and %s are so many letters apart', (one, other, apart) => {
  expect(lettersApart(one, other)).toBe(apart);
  expect(lettersApart(other, one)).toBe(apart);
});

test('a slip is mended, another word is not', () => {
  const known = ['hay', 'nitrate', 'infiltration', 'stubble'];
  expect(nearestWord('infiltraton', known)).toBe('infiltration');
  expect(nearestWord('stuble', known)).toBe('stubble');
  expect(nearestWord('bay', known)).toBeUndefined();
  expect(nearestWord('burnt', ['burst'])).toBeUndefined();
  expect(nearestWord('sorgam', ['sorghum', 'sorgum'])).toBe('sorgum');
  expect(nearestWord('nutrient', known)).toBeUndefined();
});

// The list is of our own, common practice; each of these is what somebody may type on a bad night.
test.each([
  'suicide',
  'suicde',
  'I want to kill myself',
  'end it',
  'I just want to end it all',
  'depressed',
  'hopeless',
  'bankrupt',
  'going bankrupt drought',
  'losing the farm',
  'we are losing the ranch',
  'about to lose the ranch',
  'can\u2019t sleep worried about the ranch',
  'cant sleep worried about the ranch',
  "I can't go on",
  'I am at the end of my rope',
  'my husband is depressed about the cows',
  'bank called the note',
  'farm stress line',
  '988',
])('speaks of despair: %s', (question) => {
  expect(speaksOfDespair(question)).toBe(true);
});

test.each([
  'kill weeds',
  'what kills cows in drought',
  'dead cows',
  'dead grass',
  'cow died suddenly',
  'end of season',
  'when does the grazing season end',
  'lose weight',
  'cows losing weight',
  'losing topsoil',
  'losing grass',
  'heat stress',
  'stressed grass',
  'drought stressed corn',
  'burned out pasture',
  'how do I end a lease',
  'calf crying',
  'hay worth',
  'sell out',
  'go under the fence',
  'hanging a gate',
  'depression storage',
  'cows cant take the heat',
  'hope for rain',
])('speaks of the land or the herd: %s', (question) => {
  expect(speaksOfDespair(question)).toBe(false);
});

test('lists come out of the index as they went in, and what does not fit is refused', () => {
  const lists = new Map([
    ['hay', [[0, 1] as const, [7, highestMark] as const, [900, 9] as const]],
    ['=net wrap', [[3, 30] as const]],
    ['acre', [[12, 0] as const, [12, 4] as const]],
  ]);
  const unpacked = unpack(pack(lists));
  expect(unpacked.words).toEqual([...lists.keys()].sort());
  for (const [word, list] of lists) expect(unpacked.get(word), word).toEqual(list);
  expect(lists.keys().every(unpacked.has)).toBe(true);
  expect(unpacked.has('straw')).toBe(false);
  expect(unpacked.get('straw')).toBeUndefined();
  expect(() => pack(new Map([['hay', [[1, highestMark + 1]]]]))).toThrow(RangeError);
  expect(() =>
    pack(
      new Map([
        [
          'hay',
          [
            [5, 1],
            [4, 1],
          ],
        ],
      ]),
    ),
  ).toThrow(RangeError);
});

/** A guide that is called by its title and says something. */
const guide = (url: string, title: string, text: string): SearchRecord => ({
  url,
  kind: 'guide',
  title,
  lead: title,
  words: [],
  names: [title],
  parts: [
    { title: '', text: '' },
    { anchor: 'more', title: 'More of it', text },
  ],
});
const search = openSearcher(
  buildIndex([
    guide('/hay/', 'Hay', 'Bales in the barn.'),
    guide('/panels/', 'Portable panels', 'Hot wire, ground rods and a charger. Wire again, and wire once more.'),
    guide('/barn/', 'Rods for lightning on a barn', 'Charger, wire and hay stand apart.'),
    guide('/rain/', 'Rain that a leaf is catching', 'Drops on leaves.'),
  ]),
);
const found = (question: string): readonly string[] => search(question).hits.map(({ url }) => url);

test('the whole question wins over one loose word; two letters are a word of their own; a begun word is understood', () => {
  expect(found('ground rods for portable panels')[0]).toBe('/panels/');
  expect(found('ha')).toEqual([]);
  expect(found('porta')).toEqual(['/panels/']);
  expect(search('portible panels').taken).toEqual([{ typed: 'portible', as: 'portable' }]);
  expect(search('burnt wire').taken).toEqual([]);
  expect(search('zebra hay').unknown).toEqual(['zebra']);
  // Half of it stands nowhere, so no page answers it; one strange word among several known ones is no reason to say so.
  expect(search('zebra hay').elsewhere).toBe(anyoneToAsk);
  expect(search('zebra portable panels').elsewhere).toBeUndefined();
  expect(search('wire').hits[0]?.inside).toEqual([['more', 'More of it']]);
});
