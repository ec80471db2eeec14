import type { Layout, Table } from './columns.ts';
import { type DateParts, datePartsIn, monthNamed } from './dates.ts';

export interface DatedCell {
  readonly line: number;
  readonly date: DateParts | undefined;
  /** The date as written. */
  readonly text: string;
  readonly cell: string;
  readonly flag: string;
  /** Over how many days it fell, where a column tells; empty where it does not. */
  readonly days: string;
}

const known = (year: string | undefined, month: number, day: number): DateParts | undefined =>
  /^\s*\d{4}\s*$/.test(year ?? '') ? { year: Number(year), one: month, two: day, isOpen: false } : undefined;
const monthOf = (cell: string | undefined): number => monthNamed(cell ?? '') ?? Number(cell ?? 0);

/** Every cell that should hold an amount, with its date still as written. */
export function datedCells(rows: Table, { dates, firstRow, flag, days }: Layout, rain: number): readonly DatedCell[] {
  const found: DatedCell[] = [];
  for (let index = firstRow; index < rows.length; index += 1) {
    const row = rows[index] ?? [];
    if (row.every((cell) => cell.trim() === '') || row[0]?.startsWith('#')) continue;
    const at = (column: number | undefined): string => (column === undefined ? '' : (row[column] ?? ''));
    const common = { line: index + 1, cell: at(rain), flag: at(flag), days: at(days).trim() };
    if (dates.is === 'one') {
      const text = row[dates.column] ?? '';
      found.push({ ...common, text, date: datePartsIn(text) });
    } else if (dates.is === 'parts') {
      const text = [row[dates.year], row[dates.month], dates.day === undefined ? [] : row[dates.day]].flat().join('-');
      found.push({ ...common, text, date: known(row[dates.year], monthOf(row[dates.month]), dates.day === undefined ? 0 : Number(row[dates.day])) });
    } else {
      const text = row[dates.year] ?? '';
      for (let month = 1; month <= 12; month += 1)
        found.push({ ...common, cell: row[dates.first + month - 1] ?? '', text, date: known(text, month, 0) });
    }
  }
  return found;
}
