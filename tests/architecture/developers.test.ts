import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { root } from '../support/files.ts';

const text = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
const linesOf = (code: string): readonly string[] =>
  code
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

it('shows lines that stand in the files that they are said to be of', () => {
  const shown = [...text.matchAll(/^```ts (\S+)\n([\s\S]*?)^```/gm)].map(([, path = '', code = '']) => ({ path, lines: linesOf(code) }));
  expect(shown.length).toBeGreaterThan(5);
  const gone = shown.flatMap(({ path, lines }) => {
    const there = new Set(linesOf(readFileSync(join(root, path), 'utf8')));
    return lines.filter((line) => !there.has(line)).map((line) => `${path} no longer has: ${line}`);
  });
  expect(gone, 'mend the tour in DEVELOPERS.md').toEqual([]);
});

it('names files and folders that are there', () => {
  const named = [...text.matchAll(/`((?:calculators|content|src|tests|public)\/[\w./-]+)`/g)].map(([, path = '']) => path);
  expect(named.length).toBeGreaterThan(40);
  expect(
    [...new Set(named)].filter((path) => !existsSync(join(root, path))),
    'mend the path in DEVELOPERS.md',
  ).toEqual([]);
});

it('names a test, word for word, beside each check of the season', () => {
  const section = /### What the season must hold\n([\s\S]*?)\n## /.exec(text)?.[1] ?? '';
  const rows = [...section.matchAll(/^\| (A\d+) +\| .+? \| `(.+?)` +\| (.+?) +\|$/gm)].map(([, check, path, words]) => ({ check, path, words }));
  expect(rows.map(({ check }) => check)).toEqual(Array.from({ length: 14 }, (_, index) => `A${index + 1}`));
  const gone = rows.filter(({ path, words }) => !readFileSync(join(root, 'tests', path ?? ''), 'utf8').includes(`'${words}'`));
  expect(gone, 'mend the checks of the season in DEVELOPERS.md').toEqual([]);
});
