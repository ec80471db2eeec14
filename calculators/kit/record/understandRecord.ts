import { printDay, printNumber } from '../../units/printQuantity.ts';
import { convert, type UnitName } from '../../units/units.ts';
import { amountReader, type Counting, countingIn, countings, isCounting } from './amounts.ts';
import { type Answers, splitAnswers } from './answers.ts';
import { assemble, type Gaps, type ReadCell } from './assemble.ts';
import { type Layout, layoutOf, type Table, tableOf } from './columns.ts';
import { type DateOrder, type DateParts, datePartsIn, dayNumber, daysInMonth, monthNamed, orderOf } from './dates.ts';
import { linesSaid } from './linesSaid.ts';
import type { RecordLine } from './recordLine.ts';

/** What the reading needs to know of its input. */
/** What an input that asks for a record says of it: limits of one day, in its unit. */
interface Limits {
  readonly label: string;
  readonly unit: UnitName;
  readonly min: number;
  readonly max: number;
  readonly maxRows: number;
}

/** Something about a record that its text does not settle, or that a person may settle otherwise. */
export interface Question {
  readonly name: string;
  readonly ask: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  /** What holds now; empty while the record cannot be read without an answer. */
  readonly answer: string;
}
/** What was understood of a record's text, for people to look over before they trust a number from it. */
export interface Understood {
  readonly lines: readonly RecordLine[];
  /** Set when no result may come from this text. */
  readonly problem?: string;
  readonly questions: readonly Question[];
  /** Each thing that was taken in some way, told with the line where it stands. */
  readonly told: readonly string[];
  readonly isMonthly: boolean;
  readonly dateColumn: string;
  readonly rainColumn: string;
  readonly counting: Counting;
  readonly largest?: { readonly day: number; readonly amount: number };
  /** Days between the first and the last that nobody read, by year. */
  readonly missing: readonly { readonly year: number; readonly days: number }[];
  readonly isConfirmed: boolean;
}
const empty = {
  lines: [],
  questions: [],
  told: [],
  isMonthly: false,
  dateColumn: '',
  rainColumn: '',
  counting: 'in',
  missing: [],
  isConfirmed: false,
} as const;

const short = (text: string): string => text.trim().slice(0, 20);
const columnName = (layout: Layout, column: number): string => {
  const name = layout.head[column] ?? '';
  return name === '' ? `column ${column + 1}` : `“${name.slice(0, 30)}”`;
};

interface DatedCell {
  readonly line: number;
  readonly date: DateParts | undefined;
  readonly text: string;
  readonly cell: string;
  readonly flag: string;
}
/** Every cell that should hold an amount, with its date still as written. */
function datedCells(rows: Table, { dates, firstRow, flag }: Layout, rain: number): readonly DatedCell[] {
  const known = (year: string | undefined, month: number, day: number): DateParts | undefined =>
    /^\s*\d{4}\s*$/.test(year ?? '') ? { year: Number(year), one: month, two: day, isOpen: false } : undefined;
  const monthOf = (cell: string | undefined): number => monthNamed(cell ?? '') ?? Number(cell ?? 0);
  const found: DatedCell[] = [];
  for (let index = firstRow; index < rows.length; index += 1) {
    const row = rows[index] ?? [];
    if (row.every((cell) => cell.trim() === '') || row[0]?.startsWith('#')) continue;
    const common = { line: index + 1, cell: row[rain] ?? '', flag: flag === undefined ? '' : (row[flag] ?? '') };
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

const gapOptions = [
  { value: 'not-read', label: 'Not read: they count as missing' },
  { value: 'none', label: 'No rain' },
];
const gapAnswer = (answers: Answers, name: string): Gaps => (answers[name] === 'none' ? 'none' : 'not-read');

/** Reads a record's text as far as it goes and tells how. */
export function understandRecord(input: Limits, text: string): Understood {
  const { answers, body } = splitAnswers(text);
  if (body.trim() === '') return { ...empty, problem: `${input.label} is missing. Paste it, drop a file, or type a day and its rain on each line.` };
  const table = tableOf(body, input.maxRows);
  if ('problem' in table) return { ...empty, problem: `${input.label}: ${table.problem}` };
  const { rows, cutAt } = table;
  const count = rows.filter((row) => row.some((cell) => cell.trim() !== '')).length;
  if (count > input.maxRows)
    return { ...empty, problem: `${input.label} has ${count.toLocaleString('en-US')} lines; ${input.maxRows.toLocaleString('en-US')} is the most.` };
  const layout = layoutOf(rows);
  if (!layout)
    return {
      ...empty,
      problem: `${input.label}: no line begins with a day. Write a day and its rain on each line: 2026-03-02, 0.45. Or a year and its twelve months.`,
    };
  const questions: Question[] = [];
  const told: string[] = [];
  const problems: string[] = [];

  const wanted = Number(answers['rain'] ?? Number.NaN) - 1;
  const isSettled = layout.isNamed || layout.rain.length === 1;
  const rain = layout.rain.includes(wanted) ? wanted : (layout.rain[0] ?? 1);
  if (layout.rain.length > 1 && layout.dates.is !== 'months') {
    const answer = isSettled || layout.rain.includes(wanted) ? String(rain + 1) : '';
    questions.push({
      name: 'rain',
      ask: 'Which column is the rain?',
      options: layout.rain.slice(0, 12).map((column) => ({ value: String(column + 1), label: columnName(layout, column).replace(/^c/, 'C') })),
      answer,
    });
    if (answer === '') problems.push(`${input.label} has several columns of numbers. Say below which one is the rain.`);
  }

  const cells = datedCells(rows, layout, rain);
  const dates = cells.map(({ date }) => date);
  const isOpen = dates.some((date) => date?.isOpen === true);
  const settled = orderOf(dates);
  const said = answers['order'];
  const order: DateOrder | undefined = settled ?? (said === 'day-first' || said === 'month-first' ? said : undefined);
  if (isOpen && settled === undefined) {
    const example = cells.find(({ date }) => date?.isOpen === true)?.text.trim() ?? '';
    const dayIn = (one: DateOrder) => dayOfParts(datePartsIn(example), one);
    const [month, day] = [dayIn('month-first'), dayIn('day-first')];
    questions.push({
      name: 'order',
      ask: `The dates can be read two ways. What day is ${short(example)}?`,
      options: [
        { value: 'month-first', label: month === undefined ? 'Month first' : printDay(month) },
        { value: 'day-first', label: day === undefined ? 'Day first' : printDay(day) },
      ],
      answer: order ?? '',
    });
    if (order === undefined) problems.push(`${input.label}: “${short(example)}” can be two days. Say below which one it is.`);
  } else if (isOpen) told.push(`Dates taken with the ${order === 'day-first' ? 'day' : 'month'} first: only so is each one a day.`);

  const isDecimalComma = cutAt !== ',' && cells.slice(0, 400).some(({ cell }) => /^\s*\d+,\d+\s*$/.test(cell));
  if (isDecimalComma) told.push('A comma in a number was taken as the decimal point.');
  const inHead = layout.dates.is === 'months' ? layout.head.join(' ') : (layout.head[rain] ?? '');
  const named = countingIn(inHead) ?? countingIn(layout.above);
  const asked = answers['unit'];
  const guess = named ?? (input.unit === 'mm' ? 'mm' : 'in');
  const counting: Counting = isCounting(asked) ? asked : guess;

  const read = amountReader(input.unit, counting, isDecimalComma);
  const readCells = cells.map((cell): ReadCell => ({ line: cell.line, ...spanOf(cell.date, order), what: read(cell.cell, cell.flag) }));
  const isMonthly = readCells.filter(({ days }) => days > 1).length > readCells.length / 2;
  // More than a wet country gets in a day or in a month: then nobody may take the numbers for inches unasked. One slip of the pen is no sign.
  const amounts = readCells.flatMap(({ what, days }) => (what.is === 'amount' && what.amount > 0 ? [what.amount / (days > 1 ? 5 : 1)] : []));
  const large = amounts.filter((amount) => amount > convert(10, 'in', input.unit)).length;
  const isUnlikely = large > 0.01 * amounts.length && (large > 1 || amounts.length < 4);
  const isUnitKnown = isCounting(asked) || named !== undefined || !isUnlikely;
  questions.push({
    name: 'unit',
    ask: 'The numbers are in',
    options: Object.entries(countings).map(([value, label]) => ({ value, label })),
    answer: isUnitKnown ? counting : '',
  });
  if (!isUnitKnown) problems.push(`${input.label}: nothing says what its numbers are in, and for inches some are too large. Say it below.`);
  else if (named === undefined && asked === undefined) told.push(`Nothing says what the numbers are in: taken as ${countings[counting]}.`);

  const faults = faultsOf(input, cells, readCells, order, isUnitKnown);
  const leavesOut = answers['bad'] === 'not-read';
  if (faults.length > 0 && problems.length === 0) {
    const most = faults.length > 0.2 * cells.length && faults.length > 1;
    if (!most)
      questions.push({
        name: 'bad',
        ask: `${faults.length === 1 ? 'A line' : `${faults.length.toLocaleString('en-US')} lines`} cannot be read. Mend ${faults.length === 1 ? 'it' : 'them'} in the text, or`,
        options: [{ value: 'not-read', label: 'Count as not read' }],
        answer: leavesOut ? 'not-read' : '',
      });
    if (leavesOut && !most)
      told.push(
        `Counted as not read: ${faults
          .slice(0, 3)
          .map(({ say }) => say)
          .join(' ')}${faults.length > 3 ? ` And ${faults.length - 3} more.` : ''}`,
      );
    else
      problems.push(`${faults[0]?.say}${faults.length > 1 ? ` ${linesSaid(faults.slice(1).map(({ line }) => line)).replace(/^l/, 'L')} too.` : ''}`);
  }
  const bad = new Set(faults.map(({ cell }) => cell));
  const assembled = assemble({
    cells: readCells.map((cell, index) => (bad.has(index) ? { ...cell, what: { is: 'missing' } } : cell)),
    isMonthly,
    blank: gapAnswer(answers, 'blank'),
    unlisted: gapAnswer(answers, 'unlisted'),
    afterBlanks: answers['after-blanks'] === 'total' ? 'total' : 'day',
    twice: answers['twice'],
  });
  told.push(...assembled.told);
  if (problems.length === 0 && assembled.problem !== undefined) problems.push(assembled.problem);
  questions.push(
    ...assembled.asks.map(({ name, ask, options }): Question => {
      const given = answers[name];
      const isGap = name === 'blank' || name === 'unlisted';
      const choices = options ?? gapOptions;
      return {
        name,
        ask,
        options: choices,
        answer: choices.some(({ value }) => value === given) ? (given ?? '') : isGap ? 'not-read' : name === 'after-blanks' ? 'day' : '',
      };
    }),
  );
  if (problems.length === 0 && assembled.lines.length === 0) problems.push(`${input.label}: no line of it gives an amount of rain.`);
  const [problem] = problems;
  const dateWords =
    layout.dates.is === 'one'
      ? columnName(layout, layout.dates.column)
      : layout.dates.is === 'months'
        ? 'a year a line, twelve months across'
        : layout.dates.day === undefined
          ? 'year and month'
          : 'year, month and day';
  return {
    lines: problem === undefined ? assembled.lines : [],
    ...(problem === undefined ? {} : { problem }),
    questions,
    told,
    isMonthly,
    dateColumn: dateWords,
    rainColumn: layout.dates.is === 'months' ? 'the twelve months' : columnName(layout, rain),
    counting,
    ...(assembled.largest === undefined ? {} : { largest: assembled.largest }),
    missing: assembled.missing,
    isConfirmed: answers['confirmed'] === 'yes',
  };
}

function dayOfParts(date: DateParts | undefined, order: DateOrder | undefined): number | undefined {
  if (!date || (date.isOpen && order === undefined)) return undefined;
  const [month, day] = date.isOpen && order === 'day-first' ? [date.two, date.one] : [date.one, date.two];
  return dayNumber(date.year, month, day === 0 ? daysInMonth(date.year, month) : day);
}
/** The last day that a cell speaks of and how many it covers. */
function spanOf(date: DateParts | undefined, order: DateOrder | undefined): { readonly day: number | undefined; readonly days: number } {
  const isMonth = date !== undefined && !date.isOpen && date.two === 0;
  return { day: dayOfParts(date, order), days: isMonth ? daysInMonth(date.year, date.one) : 1 };
}

interface Fault {
  readonly cell: number;
  readonly line: number;
  readonly say: string;
}
/** The most that a month may hold: no place had more than five times its wettest day in an ordinary gauge's month. */
const mostIn = ({ max }: Limits, days: number): number => max * Math.min(days, 5);

function faultsOf(
  input: Limits,
  cells: readonly DatedCell[],
  read: readonly ReadCell[],
  order: DateOrder | undefined,
  isUnitKnown: boolean,
): readonly Fault[] {
  const limit = (days: number, unit: UnitName): string => `${printNumber(input.min, 0)} to ${printNumber(mostIn(input, days), 0)} ${unit}`;
  return read.flatMap(({ line, day, days, what }, cell): readonly Fault[] => {
    const { date, text, cell: typed } = cells[cell] ?? { date: undefined, text: '', cell: '' };
    if (day === undefined && !(date?.isOpen === true && order === undefined))
      return [{ cell, line, say: `${input.label}, line ${line.toLocaleString('en-US')}: “${short(text)}” is not a day such as 2026-03-02.` }];
    if (what.is === 'bad')
      return [
        {
          cell,
          line,
          say: `${input.label}, line ${line.toLocaleString('en-US')}: “${short(typed)}” is no amount of rain. Write a number, such as 0.45.`,
        },
      ];
    if (what.is === 'amount' && isUnitKnown && (what.amount < input.min || what.amount > mostIn(input, days)))
      return [
        {
          cell,
          line,
          say: `${input.label}, line ${line.toLocaleString('en-US')}: ${short(typed)} is out of range. It can be from ${limit(days, input.unit)}.`,
        },
      ];
    return [];
  });
}
