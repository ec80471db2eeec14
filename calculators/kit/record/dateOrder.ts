import { daysInMonth } from '../../units/days.ts';
import { printDay } from '../../units/printQuantity.ts';
import type { Answers } from './answers.ts';
import type { DatedCell } from './datedCells.ts';
import { type DateOrder, type DateParts, datePartsIn, dayNumber, orderOf } from './dates.ts';
import { nothingSaid, type RecordLimits, type Said, short } from './said.ts';

const isOrder = (text: string | undefined): text is DateOrder => text === 'day-first' || text === 'month-first';

/** Whether month or day stands first: as the column itself tells, or as people say. */
export function dateOrder({ label }: RecordLimits, cells: readonly DatedCell[], answers: Answers): Said & { readonly order: DateOrder | undefined } {
  const settled = orderOf(cells.map(({ date }) => date));
  const said = answers['order'];
  const order = settled ?? (isOrder(said) ? said : undefined);
  const open = cells.find(({ date }) => date?.isOpen === true);
  if (!open) return { ...nothingSaid, order };
  if (settled !== undefined)
    return { ...nothingSaid, order, told: [`Dates taken with the ${settled === 'day-first' ? 'day' : 'month'} first: only so is each one a day.`] };
  const example = open.text.trim();
  const [month, day] = (['month-first', 'day-first'] as const).map((one) => dayOf(datePartsIn(example), one));
  return {
    order,
    questions: [
      {
        name: 'order',
        ask: `The dates can be read two ways. What day is ${short(example)}?`,
        options: [
          { value: 'month-first', label: month === undefined ? 'Month first' : printDay(month) },
          { value: 'day-first', label: day === undefined ? 'Day first' : printDay(day) },
        ],
        answer: order ?? '',
      },
    ],
    told: [],
    problem: order === undefined ? `${label}: “${short(example)}” can be two days. Say below which one it is.` : undefined,
  };
}

function dayOf(date: DateParts | undefined, order: DateOrder | undefined): number | undefined {
  if (!date || (date.isOpen && order === undefined)) return undefined;
  const [month, day] = date.isOpen && order === 'day-first' ? [date.two, date.one] : [date.one, date.two];
  return dayNumber(date.year, month, day === 0 ? daysInMonth(date.year, month) : day);
}
/** Over how many days a line says that its amount fell; nothing where that is no count of days. */
export function daysTold(text: string): number | undefined {
  const days = Number(text === '' ? 1 : text);
  return Number.isInteger(days) && days >= 1 && days <= 366 ? days : undefined;
}
export const isMonth = (date: DateParts | undefined): date is DateParts => date !== undefined && !date.isOpen && date.two === 0;
/** The last day that a cell speaks of and how many it covers. */
export function spanOf(
  { date, days }: Pick<DatedCell, 'date' | 'days'>,
  order: DateOrder | undefined,
): { readonly day: number | undefined; readonly days: number } {
  return { day: dayOf(date, order), days: isMonth(date) ? daysInMonth(date.year, date.one) : (daysTold(days) ?? 1) };
}
