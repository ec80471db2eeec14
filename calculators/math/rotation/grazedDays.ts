import { need } from '../need.ts';

/** What a stay counts that begins and ends on one day. */
const sameDay = 0.5;

/**
 * Days that a stay counts: t = o - i, with i = `inDay`, o = `outDay`, and half a day where both are one day.
 * @param options.inDay - Day on which they came in, number of the day in any calendar, whole; before or after day 0
 * @param options.outDay - Day on which they went out, in the same calendar, whole; at least `inDay`
 * @returns Days grazed, days
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example grazedDays({ inDay: 130, outDay: 135 }) //=> 5
 */
export function grazedDays({ inDay, outDay }: { readonly inDay: number; readonly outDay: number }): number {
  need('grazedDays', 'inDay', inDay, { whole: true });
  need('grazedDays', 'outDay', outDay, { atLeast: inDay, whole: true });
  return outDay === inDay ? sameDay : outDay - inDay;
}
