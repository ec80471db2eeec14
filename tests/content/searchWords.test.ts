import { expect, test } from 'vitest';
import { lettersApart } from '../../calculators/kit/lettersApart.ts';
import judged from '../../content/search/judged.json' with { type: 'json' };
import synonyms from '../../content/search/synonyms.json' with { type: 'json' };
import { speaksOfDespair } from '../../src/search/despair.ts';
import { nearestWord } from '../../src/search/nearestWord.ts';
import { askedWords, wordsOf } from '../../src/search/words.ts';

const entries = Object.entries(synonyms);
const key = (text: string): string => text.toLowerCase();
const stems = (text: string): readonly string[] => wordsOf(text).map(({ stem }) => stem);
const typed = (question: string): readonly string[] => askedWords(question).map((word) => word.stem);

test('each word has one place among the other words', () => {
  const places = new Map<string, string[]>();
  for (const [canonical, others] of entries) {
    for (const word of [canonical, ...others].map(key)) places.set(word, [...(places.get(word) ?? []), canonical]);
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
