import { withAnswers } from '../../../calculators/kit/record/answers.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import type { RainRow, Row } from '../model/row.ts';
import { dayIn, rainDays, rowsOf } from './days.ts';

/** How finely a share of several days' rain is told: a sum over a month is still right to the hundredth. */
const digits = 4;
const inches = (amountIn: number): string => String(Number(amountIn.toFixed(digits)));

/** The record of rain as forms read it, with what they would ask about it answered: inches, and a day without a line was not read. */
export function rainText(rows: readonly Row[]): string | undefined {
  const byDay = [...rainDays(rows)].toSorted(([one], [other]) => one - other);
  if (byDay.length === 0) return undefined;
  return withAnswers(
    { unit: 'in', unlisted: 'not-read', confirmed: 'yes' },
    byDay.map(([day, amountIn]) => `${isoDay(day)}, ${inches(amountIn)}`).join('\n'),
  );
}

/** The last reading of the gauge up to a day. */
export const lastReading = (rows: readonly Row[], todayDay: number): RainRow | undefined =>
  rowsOf(rows, 'rain').findLast(({ day }) => dayIn(day) <= todayDay);

/** Days between the last reading and today that nobody has read, the earliest first; none where there is no reading yet. */
export function unreadDays(rows: readonly Row[], todayDay: number): readonly number[] {
  const last = lastReading(rows, todayDay - 1);
  if (last === undefined) return [];
  const from = dayIn(last.day) + 1;
  const read = rainDays(rows);
  return Array.from({ length: Math.max(0, todayDay - from) }, (_, index) => from + index).filter((day) => !read.has(day));
}
