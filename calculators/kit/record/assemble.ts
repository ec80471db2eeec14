import { firstOfMonth, yearOf } from '../../units/days.ts';
import { printNumber } from '../../units/printQuantity.ts';
import type { AmountCell } from './amounts.ts';
import { counted, linesSaid } from './linesSaid.ts';
import type { RecordLine } from './recordLine.ts';

export type Gaps = 'none' | 'not-read';
export interface ReadCell {
  readonly line: number;
  readonly day: number | undefined;
  readonly days: number;
  readonly what: AmountCell;
}
export interface Assembling {
  readonly cells: readonly ReadCell[];
  readonly isMonthly: boolean;
  /** What an empty cell means. */
  readonly blank: Gaps;
  /** What a day without a line means. */
  readonly unlisted: Gaps;
  /** Whether an amount behind empty cells is that day's own or the total of all of them. */
  readonly afterBlanks: 'day' | 'total';
  /** What two amounts of one day mean. */
  readonly twice: string | undefined;
}
interface Asked {
  readonly name: string;
  readonly ask: string;
  readonly options?: readonly { readonly value: string; readonly label: string }[];
}
export interface Assembled {
  readonly lines: readonly RecordLine[];
  readonly problem: string | undefined;
  readonly asks: readonly Asked[];
  readonly told: readonly string[];
  readonly largest?: { readonly day: number; readonly amount: number };
  readonly missing: readonly { readonly year: number; readonly days: number }[];
}
/** A total cannot reach back further than this: a longer gap is a gauge that nobody read. */
const longestTotal = 31;

type Dated = ReadCell & { readonly day: number };
/** One cell a day, in order. Where a day stands twice with two amounts, people must say what that means. */
function oneADay(cells: readonly ReadCell[], twice: string | undefined) {
  const byDay = new Map<number, Dated>();
  const [same, different]: [number[], number[]] = [[], []];
  for (const cell of cells) {
    const { day, what } = cell;
    if (day === undefined) continue;
    const dated = { ...cell, day };
    const before = byDay.get(day);
    if (before === undefined || before.what.is !== 'amount') {
      if (before === undefined || what.is === 'amount') byDay.set(day, dated);
      continue;
    }
    if (what.is !== 'amount') continue;
    if (what.amount === before.what.amount) same.push(cell.line);
    else different.push(cell.line);
    if (twice === 'add') byDay.set(day, { ...dated, what: { ...what, amount: what.amount + before.what.amount } });
    else if (what.amount !== before.what.amount) byDay.set(day, dated);
  }
  const list = [...byDay.values()];
  // Records stand in order as a rule; sorting is for those that do not.
  if (list.some(({ day }, index) => day < (list[index - 1]?.day ?? day))) list.sort((one, other) => one.day - other.day);
  return { list, same, different };
}

/** Puts days in order, fills what was said to be dry, stretches totals over their days, and counts what nobody read. */
export function assemble({ cells, isMonthly, blank, unlisted, afterBlanks, twice }: Assembling): Assembled {
  const asks: Asked[] = [];
  const told: string[] = [];
  const { list: all, same, different } = oneADay(cells, twice);
  // A table of months runs to December; the months that are still to come are no gap.
  const lastRead = isMonthly ? all.findLastIndex(({ what }) => what.is !== 'blank') : all.length - 1;
  const list = all.slice(0, lastRead + 1);
  if (different.length > 0) {
    asks.push({
      name: 'twice',
      ask: `Some days stand twice with two amounts (${linesSaid(different)}). What holds?`,
      options: [
        { value: 'add', label: 'Both: add them up' },
        { value: 'last', label: 'The later line' },
      ],
    });
  }
  const clashing =
    different.length > 0 && twice !== 'add' && twice !== 'last'
      ? `A day stands twice with two amounts: ${linesSaid(different)}. Say below what holds.`
      : undefined;
  if (same.length > 0 && twice !== 'add') told.push(`Days that stand twice with the same amount count once: ${linesSaid(same)}.`);

  const lines: RecordLine[] = [];
  const overlapping: number[] = [];
  let [blanks, codes, traces, listedGap, afterGap, totals] = [0, 0, 0, 0, 0, 0];
  let unlistedDays = 0;
  let largest: Assembled['largest'];
  let covered = (list[0]?.day ?? 0) - (list[0]?.days ?? 1);
  let last = covered;
  for (const { line, day, days, what } of list) {
    const between = day - days - last;
    if (between > 0) {
      unlistedDays += between;
      if (unlisted === 'none' && !isMonthly) {
        for (let dry = last + 1; dry <= day - days; dry += 1) lines.push({ day: dry, amount: 0 });
        covered = day - days;
        listedGap = 0;
      }
    }
    last = day;
    if (what.is === 'blank') blanks += 1;
    if (what.is === 'missing') codes += 1;
    if (what.is === 'trace') traces += 1;
    if (what.is === 'amount' || what.is === 'trace' || (what.is === 'blank' && blank === 'none')) {
      const amount = what.is === 'amount' ? what.amount : 0;
      const isTotal = what.is === 'amount' && days === 1 && (what.isTotal || (afterBlanks === 'total' && listedGap > 0 && amount > 0));
      const gap = what.is === 'amount' && what.isTotal ? day - 1 - covered : listedGap;
      if (days === 1 && listedGap > 0 && amount > 0 && what.is === 'amount' && !what.isTotal) afterGap += 1;
      const isStretched = isTotal && gap > 0 && gap < longestTotal && lines.length > 0;
      const span = isStretched ? gap + 1 : days;
      if (isStretched || (span > 1 && !isMonthly)) totals += 1;
      if (day - span >= covered || lines.length === 0) lines.push(span === 1 ? { day, amount } : { day, amount, days: span });
      else overlapping.push(line);
      if ((isMonthly || span === 1) && amount > (largest?.amount ?? 0)) largest = { day, amount };
      covered = day;
      listedGap = 0;
    } else if (days === 1) listedGap += 1;
  }

  const problem =
    clashing ??
    (overlapping.length > 0
      ? `A total covers days that have lines of their own: ${linesSaid(overlapping)}. Leave one of them in the text.`
      : undefined);
  if (blanks > 0) asks.push({ name: 'blank', ask: `Without a number: ${counted(blanks, isMonthly ? 'month' : 'day')}. That means` });
  if (!isMonthly && unlistedDays > 0)
    asks.push({ name: 'unlisted', ask: `Without a line, between the first day and the last: ${counted(unlistedDays, 'day')}. That means` });
  if (afterGap > 0 && !isMonthly)
    asks.push({
      name: 'after-blanks',
      ask: `Right behind days that were not read: ${counted(afterGap, 'amount')}. Each is`,
      options: [
        { value: 'day', label: 'That day’s own rain' },
        { value: 'total', label: 'The total since the last reading' },
      ],
    });
  if (traces > 0) told.push(`A trace counts as read and too little to measure: ${counted(traces, 'time')}.`);
  if (codes > 0) told.push(`A mark or code such as M, - or −9999 counts as not read: ${counted(codes, 'time')}.`);
  if (totals > 0) told.push(`Totals over several days, shared evenly among them: ${printNumber(totals, 0)}.`);
  return { lines, problem, asks, told, ...(largest === undefined ? {} : { largest }), missing: missingByYear(lines, list) };
}

/** Days without an amount from the first listed to the last, by year; years without any are left out. */
function missingByYear(lines: readonly RecordLine[], list: readonly Dated[]): Assembled['missing'] {
  const byYear = new Map<number, number>();
  const first = (list[0]?.day ?? 0) - (list[0]?.days ?? 1) + 1;
  let next = first;
  // A year at a time: a gap may be a century wide.
  const count = (to: number): void => {
    while (next < to) {
      const year = yearOf(next);
      const end = Math.min(to, firstOfMonth(0, year + 1));
      byYear.set(year, (byYear.get(year) ?? 0) + end - next);
      next = end;
    }
  };
  for (const { day, days = 1 } of lines) {
    count(day - days + 1);
    next = day + 1;
  }
  count((list.at(-1)?.day ?? first - 1) + 1);
  return [...byYear].map(([year, days]) => ({ year, days }));
}
