import { csvFormatRows, csvParseRows } from 'd3-dsv';
import { daysInMonth } from '../../../calculators/units/days.ts';
import { printAsIs, printDay } from '../../../calculators/units/printQuantity.ts';
import { readQuantity } from '../../../calculators/units/readQuantity.ts';
import { convert, type UnitName, type UnitSystem } from '../../../calculators/units/units.ts';
import { isUsualDay } from '../model/parts.ts';
import type { StockLine } from '../model/row.ts';
import { type StockKind, stockKinds } from '../model/words.ts';
import { dayIn } from './days.ts';
import type { Stay } from './stays.ts';

// Tables that a spreadsheet can read, and can do no harm with: a text that it would take for a formula goes out behind an apostrophe.

const formulaLike = /^'*[=+\-@\t\r]/;
export const guarded = (text: string): string => (formulaLike.test(text) ? `'${text}` : text);
export const unguarded = (text: string): string => (/^'+[=+\-@\t\r]/.test(text) ? text.slice(1) : text);

export const moveColumns = [
  'paddock',
  'acres',
  'herd',
  'in',
  'out',
  'kind',
  'head',
  'weight_lb',
  'height_in',
  'height_out',
  'hay_lb',
  'word',
  'lb_day',
] as const;
/** The column of rain says in its name what a bare number in it counts. */
const rainColumn = { us: { name: 'rain_in', unit: 'in', most: 100 }, si: { name: 'rain_mm', unit: 'mm', most: 2540 } } as const;
const rainNames = [rainColumn.us.name, rainColumn.si.name];
/** Digits of a millimeter that a table holds: a hundredth of an inch is 0.254 mm. */
const mmDigits = 4;
/** Two amounts that a table in either unit cannot tell apart. */
export const isSameAmount = (oneIn: number, otherIn: number): boolean => Math.abs(oneIn - otherIn) < convert(10 ** -mmDigits, 'mm', 'in');

const cell = (value: number | string | undefined): string => (value === undefined ? '' : typeof value === 'number' ? String(value) : guarded(value));
const noStock: readonly (Partial<StockLine> | undefined)[] = [undefined];

/** A line for each kind of stock of each stay; what belongs to the stay stands in its first. */
export const movesCsv = (stays: readonly Stay[]): string =>
  csvFormatRows([
    [...moveColumns],
    ...stays.flatMap(({ move, name, ground, hayLb }) =>
      (move.stock.length === 0 ? noStock : move.stock).map((line, index) => {
        const isFirst = index === 0;
        return [
          cell(name),
          cell(isFirst ? ground?.areaAc : undefined),
          cell(move.herdNumber),
          cell(move.inDay),
          cell(move.outDay),
          cell(line?.kind),
          cell(line?.countHead),
          cell(line?.weightLb),
          cell(isFirst ? move.heightInIn : undefined),
          cell(isFirst ? move.heightOutIn : undefined),
          cell(isFirst && hayLb > 0 ? Math.round(hayLb) : undefined),
          cell(isFirst ? move.word : undefined),
          cell(line?.lbPerDay),
        ];
      }),
    ),
  ]);
/** In inches, or in millimeters for who reads in metric. */
export function rainCsv(
  rows: readonly { readonly day: string; readonly days: number; readonly amountIn: number; readonly isTrace?: boolean | undefined }[],
  system: UnitSystem,
): string {
  const amount = (amountIn: number): string => String(system === 'us' ? amountIn : Number(convert(amountIn, 'in', 'mm').toFixed(mmDigits)));
  return csvFormatRows([
    ['day', rainColumn[system].name, 'days'],
    ...rows.map(({ day, days, amountIn, isTrace }) => [day, isTrace === true ? 'T' : amount(amountIn), String(days)]),
  ]);
}

/** A line of a table: what it says, or what is wrong with it. */
export interface LineRead<T> {
  /** As it stands in the file, the head is line 1. */
  readonly line: number;
  readonly read?: T;
  readonly problem?: string;
}
export interface MoveLine {
  readonly paddock: string;
  readonly herdNumber: number;
  readonly inDay: string;
  readonly outDay?: string;
  readonly stock?: StockLine;
  readonly heightInIn?: number;
  readonly heightOutIn?: number;
  readonly hayLb?: number;
  readonly word?: string;
}
export interface RainLine {
  readonly day: string;
  readonly days: number;
  readonly amountIn: number;
  readonly isTrace?: true;
}

/** Letters of a file that are read at all: a century of moves is far under it. */
const mostLetters = 10 * 1024 * 1024;
type Cells = ReadonlyMap<string, string>;

/** Days as we write them, and as a spreadsheet of this country writes them again. */
function readDay(text: string): string | undefined {
  const [, year, month, day] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text) ?? [];
  const [, usMonth, usDay, usYear] = /^(\d{1,2})\/(\d{1,2})\/(\d{4}|\d{2})$/.exec(text) ?? [];
  const [y, m, d] = [year ?? (usYear?.length === 2 ? `20${usYear}` : usYear), month ?? usMonth, day ?? usDay].map(Number);
  if (y === undefined || m === undefined || d === undefined || !(d >= 1 && d <= daysInMonth(y, m))) return undefined;
  const iso = `${String(y).padStart(4, '0')}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}`;
  return isUsualDay(iso) ? iso : undefined;
}
const isKind = (word: string): word is StockKind => stockKinds.some((each) => each === word);

/** What is wrong in a line, in a sentence. */
class Fault extends Error {}
const fault = (say: string): never => {
  throw new Fault(say);
};
function needDay(cells: Cells, name: string): string {
  const text = cells.get(name) ?? '';
  return (
    readDay(text) ??
    fault(
      text === '' ? `“${name}” is empty. Write the day, such as 2026-05-01.` : `“${name}” is “${text.slice(0, 20)}”. Write a day such as 2026-05-01.`,
    )
  );
}
const dayOrNone = (cells: Cells, name: string): string | undefined => ((cells.get(name) ?? '') === '' ? undefined : needDay(cells, name));
/** As the fields of a form read it: nothing is guessed of a comma. */
function numberOrNone(cells: Cells, name: string, unit: UnitName, [least, most]: readonly [number, number], isWhole = false): number | undefined {
  const text = cells.get(name) ?? '';
  const reading = readQuantity(text, unit);
  if (reading.is === 'empty') return undefined;
  const is = `“${name}” is “${text.slice(0, 20)}”`;
  if (reading.is === 'comma') return fault(`${is}: a comma here can mean two things. Write a point for decimals: ${reading.instead}.`);
  if (reading.is !== 'value') return fault(`${is}. Write a number.`);
  const { value } = reading;
  if (value < least || value > most || (isWhole && !Number.isInteger(value)))
    return fault(`“${name}” is ${text}. Write ${isWhole ? 'a whole number' : 'a number'} from ${least} to ${printAsIs(most)}.`);
  return value;
}

const namesIn = (head: readonly string[]): readonly string[] => head.map((name) => unguarded(name.trim()).toLowerCase());
/** Whether a table is one of rain: a column of rain stands anywhere in its head, or its day stands first, which no column of moves is called. */
export function isOfRain(text: string): boolean {
  const [head = []] = csvParseRows(/^\uFEFF?(.*)/.exec(text)?.[1] ?? '');
  const names = namesIn(head);
  return rainNames.some((name) => names.includes(name)) || names[0] === 'day';
}

const quoted = (names: readonly string[], between: string): string => names.map((name) => `“${name}”`).join(between);
/** The lines under a head that names the columns, in any order; of names that stand together, one. */
function linesOf<T>(
  text: string,
  needed: readonly (readonly string[])[],
  read: (cells: Cells) => T,
): readonly LineRead<T>[] | { readonly problem: string } {
  if (text.length > mostLetters) return { problem: 'This file is larger than any record can be. It was not opened.' };
  const [head = [], ...rows] = csvParseRows(text.replace(/^\uFEFF/, ''));
  const names = namesIn(head);
  const there = (some: readonly string[]): readonly string[] => some.filter((name) => names.includes(name));
  const missing = needed.filter((some) => there(some).length === 0);
  if (missing.length > 0)
    return {
      problem: `The first line must name the columns. ${missing.map((some) => quoted(some, ' or ')).join(', ')} ${missing.length === 1 ? 'is' : 'are'} missing.`,
    };
  const twice = needed.map(there).find((some) => some.length > 1);
  if (twice !== undefined) return { problem: `The first line names ${quoted(twice, ' and ')}. Leave one of these columns.` };
  return rows.flatMap((row, index): readonly LineRead<T>[] => {
    if (row.every((each) => each.trim() === '')) return [];
    // A decimal comma that no quotes hold together pushes all behind it a column on.
    if (row.slice(names.length).some((each) => each.trim() !== ''))
      return [
        {
          line: index + 2,
          problem: 'It has more cells than the first line names. Write a point for decimals, and quotes around a text with a comma.',
        },
      ];
    const cells = new Map(names.map((name, at) => [name, unguarded((row[at] ?? '').trim())]));
    try {
      return [{ line: index + 2, read: read(cells) }];
    } catch (error) {
      if (error instanceof Fault) return [{ line: index + 2, problem: error.message }];
      throw error;
    }
  });
}

function moveLine(cells: Cells): MoveLine {
  const paddock = cells.get('paddock') ?? '';
  if (paddock === '') fault('“paddock” is empty. Write its name as your place has it.');
  const inDay = needDay(cells, 'in');
  const outDay = dayOrNone(cells, 'out');
  if (outDay !== undefined && outDay < inDay) fault(`“out” is ${printDay(dayIn(outDay))}, before “in”, ${printDay(dayIn(inDay))}.`);
  const kind = (cells.get('kind') ?? '').toLowerCase();
  const countHead = numberOrNone(cells, 'head', 'head', [0, 1e7], true);
  if (kind !== '' && !isKind(kind)) fault(`“kind” is “${kind.slice(0, 20)}”. Write one of ${stockKinds.join(', ')}.`);
  if (kind !== '' && countHead === undefined) fault('“head” is empty. Write how many there were.');
  const weightLb = numberOrNone(cells, 'weight_lb', 'lb', [1, 5000]);
  const lbPerDay = numberOrNone(cells, 'lb_day', 'lb/d', [0, 1000]);
  const heightInIn = numberOrNone(cells, 'height_in', 'in', [0, 200]);
  const heightOutIn = numberOrNone(cells, 'height_out', 'in', [0, 200]);
  const hayLb = numberOrNone(cells, 'hay_lb', 'lb', [0, 1e7]);
  const word = cells.get('word') ?? '';
  return {
    paddock,
    herdNumber: numberOrNone(cells, 'herd', 'count', [1, 50], true) ?? 1,
    inDay,
    ...(outDay === undefined ? {} : { outDay }),
    ...(isKind(kind) && countHead !== undefined
      ? { stock: { kind, countHead, ...(weightLb === undefined ? {} : { weightLb }), ...(lbPerDay === undefined ? {} : { lbPerDay }) } }
      : {}),
    ...(heightInIn === undefined ? {} : { heightInIn }),
    ...(heightOutIn === undefined ? {} : { heightOutIn }),
    ...(hayLb === undefined || hayLb === 0 ? {} : { hayLb }),
    ...(word === '' ? {} : { word: word.slice(0, 20_000) }),
  };
}
function rainLine(cells: Cells): RainLine {
  const day = needDay(cells, 'day');
  const days = numberOrNone(cells, 'days', 'd', [1, 366], true) ?? 1;
  const { name, unit, most } = cells.has(rainColumn.si.name) ? rainColumn.si : rainColumn.us;
  if (/^t(?:race)?$/i.test(cells.get(name) ?? '')) return { day, days, amountIn: 0, isTrace: true };
  const amount =
    numberOrNone(cells, name, unit, [0, most]) ?? fault(`“${name}” is empty. Write 0 where it was dry, or leave the line out where nobody read.`);
  return { day, days, amountIn: convert(amount, unit, 'in') };
}
export const readMoves = (text: string) => linesOf(text, [['paddock'], ['in']], moveLine);
export const readRain = (text: string) => linesOf(text, [['day'], rainNames], rainLine);
