import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { expect, it } from 'vitest';
import definition from '../../calculators/catalog/storm-runoff/definition.ts';
import { RowList } from '../../calculators/command/rowList.ts';
import { runTable } from '../../calculators/command/runTable.ts';

setFlagsFromString('--expose-gc');
const collect: () => void = runInNewContext('gc');
const bytesInUse = (): number => {
  collect();
  return process.memoryUsage().heapUsed;
};

/** A row's cells, its texts and its results take far more each; what is in use differs by some tens of bytes a row from one try to the next. */
const mostBytesKeptOfARow = 100;

it('keeps nothing of a row that has gone out, so that a table may be larger than the memory', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'calc-'));
  const path = join(folder, 'long.csv');
  const rows = Array.from({ length: 4000 }, (_, row) => `${1 + (row % 50) / 10}in,${String(row).padStart(500, '.')}`);
  writeFileSync(path, `rain,note\n${rows.join('\n')}\n`);
  const seen: { readonly row: number; readonly bytes: number }[] = [];
  let row = 0;
  for await (const piece of runTable(definition, path, ['note'], () => {})) {
    row += piece.split('\n').length - 1;
    // The first pieces compile and fill what is made once.
    if (row > 1000) seen.push({ row, bytes: bytesInUse() });
  }
  rmSync(folder, { recursive: true });
  const [first, last] = [seen[0], seen.at(-2)];
  if (first === undefined || last === undefined) throw new RangeError('the table came in too few pieces');
  expect(last.row - first.row).toBeGreaterThan(2000);
  expect((last.bytes - first.bytes) / (last.row - first.row)).toBeLessThan(mostBytesKeptOfARow);
});

it('names the rows of a long table in a line', () => {
  const listed = new RowList();
  for (let row = 2; row <= 9; row += 1) listed.add(row);
  for (let row = 11; row <= 100_001; row += 2) listed.add(row);
  expect(listed.said()).toBe('rows 2-9, 11, 13, 15, 17, 19, 21, 23, 25, 27, 29, 31, 33, 35, 37, 39, 41, 43, 45, 47 and 49977 more');
});
