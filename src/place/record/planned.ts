import type { PlanRow, Row } from '../model/row.ts';
import { dayIn, inDayOf, rowsOf } from './days.ts';
import type { Stay } from './stays.ts';

/** A move that was planned, and what became of it. */
export interface Planned {
  readonly plan: PlanRow;
  readonly plannedDays: number;
  readonly stay?: Stay;
  /** Above nothing: they went in so many days late. */
  readonly lateDays?: number;
  /** Above nothing: they stayed so many days longer. */
  readonly longerDays?: number;
}
/** Farther apart a move is another one. */
const mostApartDays = 30;

/** Each planned move with the stay that was nearest to it, of the same herd on the same ground; a stay answers one plan only. */
export function plannedOf(rows: readonly Row[], stays: readonly Stay[]): readonly Planned[] {
  const taken = new Set<Stay>();
  return rowsOf(rows, 'plan').map((plan): Planned => {
    const inDay = dayIn(plan.inDay);
    const plannedDays = dayIn(plan.outDay) - inDay;
    const [stay] = stays
      .filter(
        (each) =>
          !taken.has(each) &&
          each.move.paddockId === plan.paddockId &&
          each.move.herdNumber === plan.herdNumber &&
          Math.abs(each.inDay - inDay) <= mostApartDays,
      )
      .toSorted((one, other) => Math.abs(one.inDay - inDay) - Math.abs(other.inDay - inDay));
    if (stay === undefined) return { plan, plannedDays };
    taken.add(stay);
    return {
      plan,
      plannedDays,
      stay,
      lateDays: inDayOf(stay.move) - inDay,
      ...(stay.isOpen || stay.isImpossible ? {} : { longerDays: stay.days - plannedDays }),
    };
  });
}
/** A height against the one that was meant: above nothing it stood taller. */
export const heightGap = (heightIn: number | undefined, meantIn: number | undefined): number | undefined =>
  heightIn === undefined || meantIn === undefined ? undefined : heightIn - meantIn;
