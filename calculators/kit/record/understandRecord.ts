import { printNumber } from '../../units/printQuantity.ts';
import type { Counting } from './amounts.ts';
import { splitAnswers } from './answers.ts';
import { type Layout, layoutOf, type Table, tableOf } from './columns.ts';
import { countedIn } from './countedIn.ts';
import { datedCells } from './datedCells.ts';
import { dateOrder, isMonth } from './dateOrder.ts';
import { faultsOf, saidOfFaults } from './faults.ts';
import { withGaps } from './gaps.ts';
import { nothingRead } from './nothingRead.ts';
import { columnWords, rainColumn } from './rainColumn.ts';
import type { RecordLine } from './recordLine.ts';
import { nothingSaid, type Question, type RecordLimits } from './said.ts';
import { temperaturesIn, type Warmth } from './temperatures.ts';

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

type LaidOut = { readonly rows: Table; readonly cutAt: string; readonly layout: Layout } | { readonly problem: string };
/** The text cut into rows, and what its columns hold. */
function layOut({ label, maxRows }: RecordLimits, body: string): LaidOut {
  if (body.trim() === '') return { problem: `${label} is missing. Paste it, drop a file, or type a day and its rain on each line.` };
  const table = tableOf(body, maxRows);
  if ('problem' in table) return { problem: `${label}: ${table.problem}` };
  const count = table.rows.filter((row) => row.some((cell) => cell.trim() !== '')).length;
  if (count > maxRows) return { problem: `${label} has ${printNumber(count, 0)} lines; ${printNumber(maxRows, 0)} is the most.` };
  const layout = layoutOf(table.rows);
  if (layout) return { ...table, layout };
  return {
    problem: `${label}: no line begins with a day. Write a day and its rain on each line: 2026-03-02, 0.45. Or a year and its twelve months.`,
  };
}

const withWarmth = (line: RecordLine, warmth: Warmth | undefined): RecordLine => (line.days === undefined && warmth ? { ...line, ...warmth } : line);

/** Reads a record's text as far as it goes and tells how. */
export function understandRecord(input: RecordLimits, text: string): Understood {
  const { answers, body } = splitAnswers(text);
  const laidOut = layOut(input, body);
  if ('problem' in laidOut) return { ...nothingRead, problem: laidOut.problem };
  const { rows, cutAt, layout } = laidOut;

  const column = rainColumn(input, layout, answers);
  const cells = datedCells(rows, layout, column.rain);
  const dating = dateOrder(input, cells, answers);
  const counted = countedIn(input, cells, { layout, rain: column.rain, cutAt, order: dating.order, answers });
  const isMonthly = cells.filter(({ date }) => isMonth(date)).length > cells.length / 2;

  const faults = faultsOf(input, cells, counted.cells, { order: dating.order !== undefined, unit: counted.isUnitKnown });
  // Read in another column, order or unit, other cells may be at fault.
  const isOpen = [column, dating, counted].some(({ problem }) => problem !== undefined);
  const faulty = isOpen ? nothingSaid : saidOfFaults(faults, cells.length, answers);
  const bad = new Set(faults.map(({ cell }) => cell));
  const filled = withGaps(
    counted.cells.map((cell, index) => (bad.has(index) ? { ...cell, what: { is: 'missing' } } : cell)),
    isMonthly,
    answers,
  );

  const warm = input.takesTemperatures ? temperaturesIn(rows, layout, counted.cells, cutAt, answers) : undefined;
  const said = [column, dating, counted, faulty, filled, ...(warm ? [warm] : [])];
  const noAmount = filled.lines.length === 0 ? `${input.label}: no line of it gives an amount of rain.` : undefined;
  const problem = said.find((each) => each.problem !== undefined)?.problem ?? noAmount;
  return {
    lines:
      problem !== undefined
        ? []
        : warm && warm.byDay.size > 0
          ? filled.lines.map((line) => withWarmth(line, warm.byDay.get(line.day)))
          : filled.lines,
    ...(problem === undefined ? {} : { problem }),
    questions: said.flatMap(({ questions }) => questions),
    told: said.flatMap(({ told }) => told),
    isMonthly,
    ...columnWords(layout, column.rain),
    counting: counted.counting,
    ...(filled.largest === undefined ? {} : { largest: filled.largest }),
    missing: filled.missing,
    isConfirmed: answers['confirmed'] === 'yes',
  };
}
