import { dayOf } from '../../../calculators/units/printQuantity.ts';
import type { MoveRow, Row } from '../model/row.ts';

/**
 * The number of a day that a row holds: rows are read with their days looked at, so there is always one.
 * @throws RangeError if it is no day
 */
export function dayIn(iso: string): number {
  const day = dayOf(iso);
  if (day === undefined) throw new RangeError(`no day: ${iso}`);
  return day;
}
export const inDayOf = ({ inDay }: Pick<MoveRow, 'inDay'>): number => dayIn(inDay);
export const outDayOf = ({ outDay }: Pick<MoveRow, 'outDay'>): number | undefined => (outDay === undefined ? undefined : dayIn(outDay));
/** The day on which they had gone out by another; nothing while they are there. A day that has not come yet is no day out. */
export const goneDayOf = (move: Pick<MoveRow, 'outDay'>, byDay: number): number | undefined => {
  const outDay = outDayOf(move);
  return outDay === undefined || outDay > byDay ? undefined : outDay;
};
/** The day under which a row stands. */
export const dayOfRow = (row: Row): number => dayIn('inDay' in row ? row.inDay : row.day);

type OfKind<K extends Row['is']> = Extract<Row, { readonly is: K }>;
/** Rows of one kind, the earliest first. */
export const rowsOf = <K extends Row['is']>(rows: readonly Row[], is: K): readonly OfKind<K>[] =>
  rows.filter((row): row is OfKind<K> => row.is === is).toSorted((one, other) => dayOfRow(one) - dayOfRow(other) || (one.id < other.id ? -1 : 1));

/** Rain by day, from readings of one day or several: those are shared evenly over their days, and a day read twice adds up. */
export function rainDays(rows: readonly Row[]): ReadonlyMap<number, number> {
  const byDay = new Map<number, number>();
  for (const { day, days, amountIn } of rowsOf(rows, 'rain'))
    for (let each = dayIn(day) - days + 1; each <= dayIn(day); each += 1) byDay.set(each, (byDay.get(each) ?? 0) + amountIn / days);
  return byDay;
}
