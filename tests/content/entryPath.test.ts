import { expect, it } from 'vitest';
import { entryPath, letterName, letterOf } from '../../src/sources/entryPath.ts';

it('a source stands on the page of the letter that its first author begins with', () => {
  const letters = { 'Ball, D. M.': 'b', 'van Soest, P. J.': 'v', 'Ångström, A.': 'a', 'Économie rurale': 'e', '4-H': 'other', '“Hay”': 'other' };
  for (const [author, letter] of Object.entries(letters)) expect(letterOf({ authors: [author, 'Zhu, Q.'] }), author).toBe(letter);
  expect(entryPath({ id: 'ball-2015', authors: ['Ball, D. M.'] })).toBe('/sources/b/#ball-2015');
  expect(['b', 'other'].map(letterName)).toEqual(['B', 'Other']);
});
