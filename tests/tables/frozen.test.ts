import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { filesBelow } from '../support/files.ts';
import { type Cells, type FrozenTable, frozenPath, loadTables } from '../support/tableCells.ts';

/**
 * Cells of the tables as they were read. They prove nothing true: they prove that nothing changed unseen. Where a cell is mended,
 * the file is edited in the same commit, with the reason in its `changes`; `npm run freeze` adds new cells and touches no other.
 */
const tables = (await loadTables()).filter(({ cells }) => Object.keys(cells).length > 0);

const same = (one: Cells[string] | undefined, other: Cells[string] | undefined): boolean => JSON.stringify(one) === JSON.stringify(other);
function changed(name: string, was: Cells, is: Cells): readonly string[] {
  const file = `tests/tables/${name}.frozen.json`;
  return [
    ...Object.keys(is).flatMap((cell) => (Object.hasOwn(was, cell) ? [] : [`${name}: ${cell} is new. Run npm run freeze.`])),
    ...Object.entries(was).flatMap(([cell, value]) => {
      if (!Object.hasOwn(is, cell)) return [`${name}: ${cell} is gone. Take it out of ${file} and give the reason in its changes.`];
      return same(value, is[cell])
        ? []
        : [
            `${name}: ${cell} was ${JSON.stringify(value)} and is ${JSON.stringify(is[cell])}. If the source says so, edit ${file} and give the reason.`,
          ];
    }),
  ];
}

describe.each(tables)('$name', ({ name, cells }) => {
  const frozen: FrozenTable = existsSync(frozenPath(name)) ? JSON.parse(readFileSync(frozenPath(name), 'utf8')) : { changes: [], cells: {} };
  it('holds what was read', () => {
    expect(changed(name, frozen.cells, cells)).toEqual([]);
  });
  it('gives its reasons by cells and in a sentence', () => {
    for (const { cells: named, say } of frozen.changes) {
      expect(named, say).not.toEqual([]);
      expect(say).toMatch(/\S{3,}.*\.$/);
    }
  });
});

it('keeps no cells of a table that is gone', () => {
  const names = filesBelow('tests/tables', /\.frozen\.json$/).map((path) => path.replace(/^.*\/|\.frozen\.json$/g, ''));
  expect(names.filter((name) => !tables.some((table) => table.name === name))).toEqual([]);
});
