import { grass } from './grass.ts';
import { hay } from './hay.ts';
import { hazards } from './hazards.ts';
import { rain } from './rain.ts';
import { soil } from './soil.ts';
import { stock } from './stock.ts';
import type { ReferenceTable, Row, TableGroup } from './table.ts';

/** Every table that readers can look up, in the order of the page that lists them. */
export const tableGroups: readonly TableGroup[] = [rain, soil, grass, stock, hay, hazards];

export const referenceTables: readonly ReferenceTable[] = tableGroups.flatMap(({ tables }) => tables);

/** The table of a name, or an error that stops the build. */
export function tableNamed(slug: string): ReferenceTable {
  const found = referenceTables.find((table) => table.slug === slug);
  if (!found) throw new Error(`no table "${slug}" in content/tables`);
  return found;
}

/** The row of a key, or an error that names the keys there are. */
export function rowOf(table: ReferenceTable, key: string): Row {
  const found = table.rows.find((row) => row.key === key);
  if (!found) throw new Error(`table "${table.slug}" has no row "${key}"; it has ${table.rows.map((row) => row.key).join(', ')}`);
  return found;
}

/** Where a column stands in the cells of a row, or an error that names the keys there are. */
export function columnAt(table: ReferenceTable, key: string): number {
  const found = table.columns.findIndex((column) => column.key === key);
  if (found < 0) throw new Error(`table "${table.slug}" has no column "${key}"; it has ${table.columns.map((column) => column.key).join(', ')}`);
  return found;
}
