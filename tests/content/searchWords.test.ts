import { expect, test } from 'vitest';
import { lettersApart } from '../../calculators/kit/lettersApart.ts';
import judged from '../../content/search/judged.json' with { type: 'json' };
import synonyms from '../../content/search/synonyms.json' with { type: 'json' };
import { nearestWord } from '../../src/search/nearestWord.ts';
import { askedWords, canonicalWords } from '../../src/search/words.ts';

const entries = Object.entries(synonyms);
const key = (text: string): string => text.toLowerCase();

test('each word has one place among the other words', () => {
  const places = new Map<string, string[]>();
  for (const [canonical, others] of entries) {
    for (const word of [canonical, ...others].map(key)) places.set(word, [...(places.get(word) ?? []), canonical]);
  }
  expect([...places].filter(([, canonicals]) => canonicals.length > 1)).toEqual([]);
});

test('a word and its other words ask for the same', () => {
  for (const [canonical, others] of entries) {
    for (const other of others) expect(canonicalWords(other), other).toEqual(canonicalWords(canonical));
  }
});

test('no question is judged twice', () => {
  const questions = Object.values(judged).flatMap((queries) => Object.keys(queries).map(key));
  expect(questions.filter((question, at) => questions.indexOf(question) !== at)).toEqual([]);
});

test('a number is the same with and without its comma, a question without the words that say nothing', () => {
  expect(askedWords('27,154 gallons?')).toEqual(askedWords('27154 gal'));
  expect(askedWords('How much hay do I need?')).toEqual(['hay']);
  expect(askedWords('How much is it?')).not.toEqual([]);
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
  expect(nearestWord('nutrient', known)).toBeUndefined();
});
