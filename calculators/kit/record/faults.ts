import { printNumber } from '../../units/printQuantity.ts';
import type { Answers } from './answers.ts';
import type { ReadCell } from './assemble.ts';
import type { DatedCell } from './datedCells.ts';
import { daysTold, isMonth } from './dateOrder.ts';
import { linesSaid } from './linesSaid.ts';
import { nothingSaid, type RecordLimits, type Said, short } from './said.ts';

export interface Fault {
  readonly cell: number;
  readonly line: number;
  readonly say: string;
}
/** The most that a month may hold: no place had more than five times its wettest day in an ordinary gauge's month. */
const mostIn = ({ max }: RecordLimits, days: number): number => max * Math.min(days, 5);

/** Cells that are no day, no amount, or more than there can be. A date in an open order is asked about elsewhere, and so is an unknown unit. */
export function faultsOf(
  input: RecordLimits,
  cells: readonly DatedCell[],
  read: readonly ReadCell[],
  known: { readonly order: boolean; readonly unit: boolean },
): readonly Fault[] {
  const faultOf = ({ day, days, what }: ReadCell, { date, text, cell, days: daysText }: DatedCell): string | undefined => {
    if (day === undefined && (known.order || date?.isOpen !== true)) return `“${short(text)}” is not a day such as 2026-03-02.`;
    if (!isMonth(date) && daysTold(daysText) === undefined) return `“${short(daysText)}” is no count of days, 1 to 366.`;
    if (what.is === 'bad') return `“${short(cell)}” is no amount of rain. Write a number, such as 0.45.`;
    if (what.is !== 'amount' || !known.unit || (what.amount >= input.min && what.amount <= mostIn(input, days))) return undefined;
    return `${short(cell)} is out of range. It can be from ${printNumber(input.min, 0)} to ${printNumber(mostIn(input, days), 0)} ${input.unit}.`;
  };
  return cells.flatMap((cell, index): readonly Fault[] => {
    const found = read[index];
    const say = found && faultOf(found, cell);
    return say === undefined ? [] : [{ cell: index, line: cell.line, say: `${input.label}, line ${printNumber(cell.line, 0)}: ${say}` }];
  });
}

/** A few lines that cannot be read may be left out if people say so. Where it is many, the text is something else. */
export function saidOfFaults(faults: readonly Fault[], cellCount: number, answers: Answers): Said {
  const [first, ...others] = faults;
  if (!first) return nothingSaid;
  const count = faults.length;
  const areMany = count > 0.2 * cellCount && count > 1;
  const leavesOut = answers['bad'] === 'not-read';
  const question = {
    name: 'bad',
    ask: `${count === 1 ? 'A line' : `${printNumber(count, 0)} lines`} cannot be read. Mend ${count === 1 ? 'it' : 'them'} in the text, or`,
    options: [{ value: 'not-read', label: 'Count as not read' }],
    answer: leavesOut ? 'not-read' : '',
  };
  const questions = areMany ? [] : [question];
  if (leavesOut && !areMany) {
    const some = faults.slice(0, 3).map(({ say }) => say);
    return { questions, told: [`Counted as not read: ${some.join(' ')}${count > 3 ? ` And ${count - 3} more.` : ''}`], problem: undefined };
  }
  const rest = count > 1 ? ` ${linesSaid(others.map(({ line }) => line)).replace(/^l/, 'L')} too.` : '';
  return { questions, told: [], problem: `${first.say}${rest}` };
}
