import { csvFormatRows, csvParseRows } from 'd3-dsv';
import { daysInMonth } from '../../../calculators/units/days.ts';
import { printAsIs, printDay } from '../../../calculators/units/printQuantity.ts';
import { readQuantity } from '../../../calculators/units/readQuantity.ts';
import { convert, type UnitName, type UnitSystem } from '../../../calculators/units/units.ts';
import { isUsualDay } from '../model/parts.ts';
import type { StockLine } from '../model/row.ts';
import { type StockKind, stockKinds } from '../model/words.ts';
import { area, type Measure, measures, namesOf, type ToldMeasure, told } from './csvColumns.ts';
import { dayIn } from './days.ts';
import type { Stay } from './stays.ts';

// Tables that a spreadsheet can read, and can do no harm with: a text that it would take for a formula goes out behind an apostrophe.

const formulaLike = /^'*[=+\-@\t\r]/;
export const guarded = (text: string): string => (formulaLike.test(text) ? `'${text}` : text);
export const unguarded = (text: string): string => (/^'+[=+\-@\t\r]/.test(text) ? text.slice(1) : text);

const cell = (value: number | string | undefined): string => (value === undefined ? '' : typeof value === 'number' ? String(value) : guarded(value));
/** Whole pounds, or tenths of a kilogram: hay is not weighed finer. */
const toldHay = (hayLb: number, system: UnitSystem): number =>
  system === 'us' ? Math.round(hayLb) : Math.round(convert(hayLb, 'lb', 'kg') * 10) / 10;
const noStock: readonly (Partial<StockLine> | undefined)[] = [undefined];

/** A line for each kind of stock of each stay; what belongs to the stay stands in its first. In the units of that reader, which the columns name. */
export function movesCsv(stays: readonly Stay[], system: UnitSystem): string {
  const name = (measure: ToldMeasure): string => measure[system].name;
  const amount = (value: number | undefined, measure: ToldMeasure): string => cell(value === undefined ? undefined : told(value, measure, system));
  return csvFormatRows([
    [
      'paddock',
      name(area),
      'herd',
      'in',
      'out',
      'kind',
      'head',
      name(measures.weight),
      name(measures.heightIn),
      name(measures.heightOut),
      name(measures.hay),
      'word',
      name(measures.eaten),
    ],
    ...stays.flatMap(({ move, name: paddock, ground, hayLb }) =>
      (move.stock.length === 0 ? noStock : move.stock).map((line, index) => {
        const isFirst = index === 0;
        return [
          cell(paddock),
          amount(isFirst ? ground?.areaAc : undefined, area),
          cell(move.herdNumber),
          cell(move.inDay),
          cell(move.outDay),
          cell(line?.kind),
          cell(line?.countHead),
          amount(line?.weightLb, measures.weight),
          amount(isFirst ? move.heightInIn : undefined, measures.heightIn),
          amount(isFirst ? move.heightOutIn : undefined, measures.heightOut),
          cell(isFirst && hayLb > 0 ? toldHay(hayLb, system) : undefined),
          cell(isFirst ? move.word : undefined),
          amount(line?.lbPerDay, measures.eaten),
        ];
      }),
    ),
  ]);
}
/** In inches, or in millimeters for who reads in metric. */
export const rainCsv = (
  rows: readonly { readonly day: string; readonly days: number; readonly amountIn: number; readonly isTrace?: boolean | undefined }[],
  system: UnitSystem,
): string =>
  csvFormatRows([
    ['day', measures.rain[system].name, 'days'],
    ...rows.map(({ day, days, amountIn, isTrace }) => [day, isTrace === true ? 'T' : cell(told(amountIn, measures.rain, system)), String(days)]),
  ]);

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
/** An amount in the unit that its column names, in the one that is kept. */
function amountOrNone(cells: Cells, measure: Measure): number | undefined {
  const { name, unit, within } = cells.has(measure.si.name) ? measure.si : measure.us;
  const value = numberOrNone(cells, name, unit, within);
  // A conversion leaves dust in the last digits: 101.6 mm are 4 in.
  return value === undefined || unit === measure.us.unit ? value : Number(convert(value, unit, measure.us.unit).toPrecision(14));
}

const namesIn = (head: readonly string[]): readonly string[] => head.map((name) => unguarded(name.trim()).toLowerCase());
/** Whether a table is one of rain: a column of rain stands anywhere in its head, or its day stands first, which no column of moves is called. */
export function isOfRain(text: string): boolean {
  const [head = []] = csvParseRows(/^\uFEFF?(.*)/.exec(text)?.[1] ?? '');
  const names = namesIn(head);
  return namesOf(measures.rain).some((name) => names.includes(name)) || names[0] === 'day';
}

const quoted = (names: readonly string[], between: string): string => names.map((name) => `“${name}”`).join(between);
/** The lines under a head that names the columns, in any order; of names that stand together one is needed; of the two of a measure only one may stand. */
function linesOf<T>(
  text: string,
  needed: readonly (readonly string[])[],
  either: readonly Measure[],
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
  const twice = either
    .map(namesOf)
    .map(there)
    .find((some) => some.length > 1);
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
  const weightLb = amountOrNone(cells, measures.weight);
  const lbPerDay = amountOrNone(cells, measures.eaten);
  const heightInIn = amountOrNone(cells, measures.heightIn);
  const heightOutIn = amountOrNone(cells, measures.heightOut);
  const hayLb = amountOrNone(cells, measures.hay);
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
  const name = namesOf(measures.rain).find((each) => cells.has(each)) ?? measures.rain.us.name;
  if (/^t(?:race)?$/i.test(cells.get(name) ?? '')) return { day, days, amountIn: 0, isTrace: true };
  const amountIn =
    amountOrNone(cells, measures.rain) ?? fault(`“${name}” is empty. Write 0 where it was dry, or leave the line out where nobody read.`);
  return { day, days, amountIn };
}
const { rain, ...ofMoves } = measures;
export const readMoves = (text: string) => linesOf(text, [['paddock'], ['in']], Object.values(ofMoves), moveLine);
export const readRain = (text: string) => linesOf(text, [['day'], namesOf(rain)], [rain], rainLine);
