import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesBelow, root } from '../support/files.ts';

/** A missing key that becomes a number or an empty word goes on as if it had been there. `needThere` stops it instead. */
const fallback = /\?\? (?:0|''|""|-1|NaN|Number\.NaN|\[\]|\[(?:0|Number\.NaN))(?![\w.])/;

describe('a missing key', () => {
  it.each(filesBelow('calculators/math', /\.ts$/))('never becomes a number in %s', (path) => {
    const lines = readFileSync(join(root, path), 'utf8').split('\n');
    expect(lines.filter((line) => fallback.test(line))).toEqual([]);
  });
});
