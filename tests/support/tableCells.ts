import { join } from 'node:path';
import { filesBelow, root } from './files.ts';

export type CellOf = number | string | boolean | null;
/** A cell, or a list of plain cells, by its path: `forageHeights.tall-fescue.startIn`. Numbers without end are told as words. */
export type Cells = Readonly<Record<string, CellOf | readonly CellOf[]>>;

/** What is said of a row, not what it holds: readers see it, and other tests check it. */
const said = new Set(['source', 'where', 'seen', 'name', 'label', 'printed']);

const isPlain = (value: unknown): value is CellOf => value === null || ['number', 'string', 'boolean'].includes(typeof value);
const isRow = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value);
const told = (value: CellOf): CellOf => (typeof value === 'number' && !Number.isFinite(value) ? String(value) : value);

/** Names for rows of a list: as many of their own words as it takes to tell them apart, so that a new row moves no other. */
function rowNames(rows: readonly unknown[]): readonly string[] {
  const words = rows.map((row) =>
    isRow(row)
      ? Object.entries(row).flatMap(([key, value]) => (typeof value === 'string' && (key === 'source' || !said.has(key)) ? [value] : []))
      : [],
  );
  const named = Math.max(0, ...words.map((each) => each.length));
  for (let count = 1; count <= named; count++) {
    const names = words.map((each) => each.slice(0, count).join(', '));
    if (new Set(names).size === names.length && !names.includes('')) return names;
  }
  return rows.map((_, index) => String(index));
}

function* cellsBelow(path: string, value: unknown): Generator<readonly [string, CellOf | readonly CellOf[]]> {
  if (isPlain(value)) yield [path, told(value)];
  else if (Array.isArray(value)) {
    const list: readonly unknown[] = value;
    if (list.length > 0 && list.every(isPlain)) yield [path, list.map(told)];
    else {
      const names = rowNames(list);
      for (const [index, row] of list.entries()) yield* cellsBelow(`${path}.${names[index] ?? index}`, row);
    }
  } else if (isRow(value))
    for (const [key, each] of Object.entries(value)) if (!said.has(key) || typeof each !== 'string') yield* cellsBelow(`${path}.${key}`, each);
}

export interface Table {
  readonly name: string;
  readonly exports: Readonly<Record<string, unknown>>;
  readonly cells: Cells;
}
/** Every published number that the calculators rest on. */
export const loadTables = (): Promise<readonly Table[]> =>
  Promise.all(
    filesBelow('calculators/tables', /\.ts$/).map(async (path) => {
      const exports: Readonly<Record<string, unknown>> = await import(join(root, path));
      const cells = Object.entries(exports).flatMap(([name, value]) => (typeof value === 'function' ? [] : [...cellsBelow(name, value)]));
      return { name: path.replace(/^.*\/|\.ts$/g, ''), exports, cells: Object.fromEntries(cells) };
    }),
  );

/** Cells as they were read once, and why any of them was changed since. */
export interface FrozenTable {
  readonly changes: readonly { readonly cells: readonly string[]; readonly say: string }[];
  readonly cells: Cells;
}
export const frozenPath = (name: string): string => join(root, `tests/tables/${name}.frozen.json`);
