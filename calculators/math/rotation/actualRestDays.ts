import { need } from '../need.ts';

/**
 * Rest that a paddock really had: R = i - o, with i = `nextInDay`, o = `outDay`.
 * @param options.outDay - Day on which the last stock went out, number of the day in any calendar, whole; before or after day 0
 * @param options.nextInDay - Day on which stock came in again, in the same calendar, whole; at least `outDay`
 * @returns Rest, days
 * @throws RangeError if a value is outside its range
 * @source our own, calendar arithmetic
 * @example actualRestDays({ outDay: 130, nextInDay: 165 }) //=> 35
 */
export function actualRestDays({ outDay, nextInDay }: { readonly outDay: number; readonly nextInDay: number }): number {
  need('actualRestDays', 'outDay', outDay, { whole: true });
  need('actualRestDays', 'nextInDay', nextInDay, { atLeast: outDay, whole: true });
  return nextInDay - outDay;
}
