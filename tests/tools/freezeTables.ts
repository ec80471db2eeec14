import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { type FrozenTable, frozenPath, loadTables } from '../support/tableCells.ts';

// `npm run freeze`: keeps the cells of new tables and new rows. A cell that stands already is changed by hand only, with its reason.
for (const { name, cells } of await loadTables()) {
  const path = frozenPath(name);
  const was: FrozenTable = existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : { changes: [], cells: {} };
  const fresh = Object.keys(cells).filter((cell) => !Object.hasOwn(was.cells, cell));
  if (fresh.length === 0) continue;
  const order = [...Object.keys(cells), ...Object.keys(was.cells).filter((cell) => !Object.hasOwn(cells, cell))];
  const kept = Object.fromEntries(order.map((cell) => [cell, was.cells[cell] ?? cells[cell]]));
  const printed = (value: unknown): string =>
    Array.isArray(value) ? `[${value.map((each: unknown) => JSON.stringify(each)).join(', ')}]` : JSON.stringify(value);
  const lines = Object.entries(kept).map(([cell, value]) => `    ${JSON.stringify(cell)}: ${printed(value)}`);
  writeFileSync(
    path,
    `{\n  "changes": ${JSON.stringify(was.changes, null, 2).replaceAll('\n', '\n  ')},\n  "cells": {\n${lines.join(',\n')}\n  }\n}\n`,
  );
  console.log(`${name}: ${fresh.length} new cells`);
}
