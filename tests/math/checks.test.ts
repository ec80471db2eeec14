import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type CheckList, failing, halfLastDigit } from '../../calculators/math/checks.ts';
import { filesBelow, root } from '../support/files.ts';
import { isNarrowed, isWantedPath } from '../support/mutated.ts';

const lists: { readonly path: string; readonly list: CheckList }[] = await Promise.all(
  filesBelow('calculators/math', /\.cases\.ts$/)
    .filter(isWantedPath)
    .map(async (path) => ({ path, list: (await import(join(root, path))).default })),
);

describe('the matcher for printed values', () => {
  it('allows half of the last printed digit, no more', () => {
    expect(halfLastDigit('0.71')).toBe(0.005);
    expect(halfLastDigit('27,154')).toBe(0.5);
    const check = { what: '', printed: '0.71', source: '', where: '', seen: 'print' } as const;
    expect(failing({ ...check, ours: () => 0.7149 })).toBeUndefined();
    expect(failing({ ...check, ours: () => 0.7151 })).toContain('printed 0.71');
    expect(failing({ ...check, ours: () => Number.NaN })).toContain('ours NaN');
  });
});

describe.each(lists)('$path', ({ path, list }) => {
  it('stands beside the function that it names', () => {
    const file = path.replace(/\.cases\.ts$/, '.ts');
    expect(existsSync(join(root, file)), `${file} exists`).toBe(true);
    expect(readFileSync(join(root, file), 'utf8')).toMatch(new RegExp(`export (function|const) ${list.of}\\b`));
  });
  it('agrees with what the sources print', () => {
    expect(list.checks.map(failing).filter((problem) => problem !== undefined)).toEqual([]);
  });
  it('cites sources that exist, and a place in them', () => {
    const missing = list.checks.filter(({ source, where }) => where === '' || !existsSync(join(root, `content/sources/${source}.json`)));
    expect(missing.map(({ what, source }) => `${what}: ${source}`)).toEqual([]);
  });
});

it.skipIf(isNarrowed)('holds ours against at least 500 values that somebody read, from at least 40 publications', () => {
  const read = lists.flatMap(({ list }) => list.checks).filter(({ seen }) => seen === 'print' || seen === 'transcription');
  expect(read.length).toBeGreaterThanOrEqual(500);
  expect(new Set(read.map(({ source }) => source)).size).toBeGreaterThanOrEqual(40);
});
