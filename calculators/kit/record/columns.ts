import { dsvFormat } from 'd3-dsv';
import { datePartsIn, monthNamed } from './dates.ts';
import { cellTooLong, longestRead, textTooLong } from './limits.ts';

export type Table = readonly (readonly string[])[];

/** The rows of a text, cut at what most of its lines are cut at. A row's place in the list is its line in the text, less one. */
export function tableOf(body: string, maxRows: number): { readonly rows: Table; readonly cutAt: string } | { readonly problem: string } {
  const text = body.replace(/^\ufeff/, '');
  const sample = text.slice(0, 6000).split('\n', 60);
  const holding = (mark: string): number => sample.filter((line) => line.includes(mark)).length;
  const lines = sample.filter((line) => line.trim() !== '').length;
  const cutAt = ['\t', ';', ','].find((mark) => holding(mark) > lines / 2) ?? ' ';
  const long = textTooLong(text, cutAt, maxRows);
  if (long !== undefined) return { problem: long };
  const rows =
    cutAt === ' ' ? text.split('\n').map((line) => (line.trim() === '' ? [''] : line.trim().split(/\s+/))) : dsvFormat(cutAt).parseRows(text);
  const wide = cellTooLong(rows);
  return wide === undefined ? { rows, cutAt } : { problem: wide };
}

/** A unit stands in the first words above a table, if anywhere. */
const longestAbove = 2000;

/** Where a row keeps its day, its month, or twelve of them. */
export type DateColumns =
  | { readonly is: 'one'; readonly column: number }
  | { readonly is: 'parts'; readonly year: number; readonly month: number; readonly day: number | undefined }
  | { readonly is: 'months'; readonly year: number; readonly first: number };

export interface Layout {
  readonly dates: DateColumns;
  /** Names of the columns; empty where no line names them. */
  readonly head: readonly string[];
  /** Lines above the data, for a unit that stands there. */
  readonly above: string;
  readonly firstRow: number;
  /** Columns that may hold rain: the first is taken unless somebody says otherwise. */
  readonly rain: readonly number[];
  /** Whether their names say that they hold rain. */
  readonly isNamed: boolean;
  readonly flag: number | undefined;
  /** Column that tells over how many days an amount fell, the last of them the line’s own. */
  readonly days: number | undefined;
  /** Columns of the day’s high and low temperature, where a line names them. */
  readonly high: number | undefined;
  readonly low: number | undefined;
}

const isYear = (cell: string | undefined): boolean => /^(?:1[789]|2[01])\d\d$/.test(cell?.trim() ?? '');
const isWhole = (cell: string | undefined, most: number): boolean => {
  const text = cell?.trim() ?? '';
  return /^\d{1,2}$/.test(text) && Number(text) >= 1 && Number(text) <= most;
};
const isMonth = (cell: string | undefined): boolean => isWhole(cell, 12) || monthNamed(cell ?? '') !== undefined;
const isNumberOrGap = (cell: string | undefined): boolean => {
  const text = cell?.trim() ?? '';
  return text.length <= longestRead && /^(?:-?[\d.,]+\s*(?:[a-z*"”]{0,2})|t(?:race)?|m|-*|n\/?a|missing)?$/i.test(text);
};
const holdsNumber = (cell: string | undefined): boolean => /\d/.test(cell ?? '');

const named = {
  year: /^\W*(?:year|yr|yyyy)\b/i,
  month: /^\W*(?:month|mon|mo)\b/i,
  day: /^\W*(?:day|dd|dy|dom)\b/i,
  rain: /rain|precip|prcp|prec\b|ppt|pcp|\brr\b|gauge|moisture|amount|total/i,
  notRain: /snow|days?\b.*(?:rain|wet)|prob|chance|duration|intensity|rate|flag|attr|qual|normal/i,
  flag: /flag|attr|qual|code/i,
  days: /^\W*days\W*$/i,
  high: /^\W*(?:t(?:emp(?:erature)?)?\W*(?:max(?:imum)?|high)|(?:max(?:imum)?|high)(?:\W+(?:air\W+)?t(?:emp(?:erature)?)?)?)\b/i,
  low: /^\W*(?:t(?:emp(?:erature)?)?\W*(?:min(?:imum)?|low)|(?:min(?:imum)?|low)(?:\W+(?:air\W+)?t(?:emp(?:erature)?)?)?)\b/i,
} as const;
/** `rainIn` and `rain_in` as words. */
const words = (cell: string): string => cell.replace(/([a-z])([A-Z])/g, '$1 $2').replaceAll('_', ' ');
const at = (head: readonly string[], name: RegExp): number | undefined => {
  const found = head.findIndex((cell) => name.test(words(cell)));
  return found < 0 ? undefined : found;
};

/** How the dates of these rows stand, taken from their first rows and the names above them. */
function datesOf(rows: Table, head: readonly string[]): DateColumns | undefined {
  const [row = []] = rows;
  // A line here and there may be spoilt; a title or a name may happen to look like data.
  const most = (holds: (each: readonly string[]) => boolean): boolean => rows.filter(holds).length > 0.6 * rows.length;
  const one = row.findIndex((cell) => datePartsIn(cell) !== undefined);
  const year = at(head, named.year) ?? row.findIndex(isYear);
  const firstMonth = at(head, /^\W*jan/i) ?? -1;
  const hasMonths = firstMonth >= 0 && /^\W*dec/i.test(head[firstMonth + 11] ?? '');
  if (isYear(row[year]) && (hasMonths || (head.length === 0 && (row.length === 13 || row.length === 14) && year === 0))) {
    const first = hasMonths ? firstMonth : 1;
    return most((each) => isYear(each[year]) && each.slice(first, first + 12).every(isNumberOrGap)) ? { is: 'months', year, first } : undefined;
  }
  if (one >= 0) return most((each) => datePartsIn(each[one] ?? '') !== undefined) ? { is: 'one', column: one } : undefined;
  if (!isYear(row[year])) return undefined;
  const month = at(head, named.month) ?? year + 1;
  if (!isMonth(row[month]) || !most((each) => isYear(each[year]))) return undefined;
  const day = at(head, named.day) ?? (head.length === 0 ? month + 1 : undefined);
  const hasDay = day !== undefined && most((each) => isWhole(each[day], 31)) && (at(head, named.day) !== undefined || row.length > day + 1);
  return { is: 'parts', year, month, day: hasDay ? day : undefined };
}

/** The layout of a table, or nothing where no line begins with a date. */
export function layoutOf(rows: Table): Layout | undefined {
  const filled = rows.slice(0, 120).flatMap((row, index) => (row.some((cell) => cell.trim() !== '') && !row[0]?.startsWith('#') ? [index] : []));
  for (const [place, firstRow] of filled.slice(0, 40).entries()) {
    const before = filled[place - 1];
    const headRow = before === undefined ? [] : (rows[before] ?? []);
    const head = headRow.length > 1 ? headRow.map((cell) => cell.trim().slice(0, longestRead)) : [];
    const sample = filled.slice(place, place + 60).map((index) => rows[index] ?? []);
    const dates = datesOf(sample, head);
    if (dates === undefined) continue;
    const taken = dates.is === 'one' ? [dates.column] : dates.is === 'parts' ? [dates.year, dates.month, dates.day] : [];
    const width = Math.max(...sample.map((row) => row.length));
    const others = Array.from({ length: width }, (_, column) => column).filter((column) => !taken.includes(column));
    const inNames = others.filter((column) => named.rain.test(words(head[column] ?? '')) && !named.notRain.test(words(head[column] ?? '')));
    const inNumbers = others.filter(
      (column) => sample.some((row) => holdsNumber(row[column])) && sample.filter((row) => isNumberOrGap(row[column])).length > 0.6 * sample.length,
    );
    const rain = inNames.length > 0 ? inNames : inNumbers.length > 0 ? inNumbers : others;
    return {
      dates,
      head,
      above: filled
        .slice(0, place)
        .map((index) => (rows[index] ?? []).join(' '))
        .join(' ')
        .slice(0, longestAbove),
      firstRow,
      rain: dates.is === 'months' ? [dates.first] : rain,
      isNamed: dates.is === 'months' || inNames.length > 0,
      flag: others.find((column) => named.flag.test(head[column] ?? '')),
      days: dates.is === 'months' ? undefined : others.find((column) => named.days.test(head[column] ?? '')),
      high: others.find((column) => named.high.test(words(head[column] ?? ''))),
      low: others.find((column) => named.low.test(words(head[column] ?? ''))),
    };
  }
  return undefined;
}
