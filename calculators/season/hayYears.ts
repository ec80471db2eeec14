import { needThere } from '../math/need.ts';
import { type Calendar, dayAfter, MADE_UP, type MonthDay, type Weather } from './weather.ts';

/** Days of a record sorted into years that begin on one date. */
export interface Periods {
  /** Which period each day belongs to; 0 is what lies before the first beginning. */
  readonly period: Int32Array;
  readonly count: number;
  /** Periods that are there from their first day to the day before the next. */
  readonly whole: readonly number[];
  /** On which day of the record each of these begins. */
  readonly firstDays: readonly number[];
}

/** Sorts days into years from one date to the next. A hay year runs from turn-out to turn-out, so that no winter is cut in two. */
export function yearsFrom({ monthDay }: Pick<Calendar, 'monthDay'>, start: MonthDay): Periods {
  const period = new Int32Array(monthDay.length);
  const begins: number[] = [];
  for (let at = 0; at < monthDay.length; at += 1) {
    if (monthDay[at] === start) begins.push(at);
    period[at] = begins.length;
  }
  const last = begins.length;
  // The last one is whole only if the record ends on the eve of the next; a record may also begin on the very day.
  const isLastWhole = last > 0 && dayAfter(needThere('yearsFrom', 'last day', monthDay.at(-1))) === start;
  const firstDays = begins.slice(0, Math.max(0, isLastWhole ? last : last - 1));
  return { period, count: last + 1, whole: firstDays.map((_, index) => index + 1), firstDays };
}

/** Days without a reading of rain past which a hay year is not counted. */
export const mostDaysWithoutRain = 3;

/** Days of each period on which nobody read the rain. */
export function daysWithoutRain({ madeUp }: Weather, { period, count }: Periods): readonly number[] {
  const days = Array.from({ length: count }, () => 0);
  for (let at = 0; at < madeUp.length; at += 1) {
    if ((needThere('daysWithoutRain', 'day', madeUp[at]) & MADE_UP.noRain) === 0) continue;
    const each = needThere('daysWithoutRain', 'day', period[at]);
    days[each] = needThere('daysWithoutRain', 'period', days[each]) + 1;
  }
  return days;
}

/** Whole hay years of some weather, and those of them whose rain was read. */
export function yearsIn(weather: Weather, turnOut: MonthDay): { readonly whole: number; readonly counted: number } {
  const periods = yearsFrom(weather, turnOut);
  const dry = daysWithoutRain(weather, periods);
  const counted = periods.whole.filter((period) => needThere('yearsIn', `period ${period}`, dry[period]) <= mostDaysWithoutRain);
  return { whole: periods.whole.length, counted: counted.length };
}
