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
