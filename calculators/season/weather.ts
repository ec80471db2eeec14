import { need, needThere } from '../math/need.ts';

/** A day of the calendar as one number, month times 100 and day: 420 is 20 April. So days of all years compare. */
export type MonthDay = number;

/** Days in order, none left out, each array as long as the others. */
export interface Days {
  readonly rainMm: Float64Array;
  readonly maxTempC: Float64Array;
  readonly minTempC: Float64Array;
}
export interface FirstDay {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  readonly day: number;
}
/** Days as somebody wrote them down. What nobody wrote down is NaN. */
export interface DailyRecord extends Days {
  readonly first: FirstDay;
}

/** How a day's numbers came about, in bits; 0 is a day as it was written down. */
export const MADE_UP = { byLine: 1, byOtherYears: 2, noRain: 4 } as const;

/** Days that the season can run on: every number is there. */
export interface Weather extends Days {
  readonly days: number;
  readonly year: Int32Array;
  readonly monthDay: Int32Array;
  /** Bits of `MADE_UP`. */
  readonly madeUp: Uint8Array;
}

export interface Calendar {
  readonly year: Int32Array;
  readonly monthDay: Int32Array;
}
export const isLeapYear = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const shortMonths: readonly number[] = [4, 6, 9, 11];
const daysInMonth = (month: number, year: number): number => (month === 2 ? (isLeapYear(year) ? 29 : 28) : shortMonths.includes(month) ? 30 : 31);

export function calendarFrom(first: FirstDay, days: number): Calendar {
  need('calendarFrom', 'days', days, { atLeast: 1, whole: true });
  let { year, month, day } = first;
  if (!(month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(month, year)))
    throw new RangeError(`calendarFrom needs a day of the calendar, got ${year}-${month}-${day}`);
  const calendar = { year: new Int32Array(days), monthDay: new Int32Array(days) };
  // By hand: dates of the platform take as long as all else that is worked out of a day's weather.
  for (let at = 0; at < days; at += 1) {
    calendar.year[at] = year;
    calendar.monthDay[at] = month * 100 + day;
    day += 1;
    if (day <= daysInMonth(month, year)) continue;
    [month, day] = [month + 1, 1];
    if (month > 12) [year, month] = [year + 1, 1];
  }
  return calendar;
}
export const monthOf = (monthDay: MonthDay): number => Math.floor(monthDay / 100);
export const dayOf = (monthDay: MonthDay): number => monthDay % 100;

/** A day so many after another in a year of 365 days, in which 29 February is 28 February. */
function shifted(day: MonthDay, by: number): MonthDay {
  const date = new Date(Date.UTC(2001, monthOf(day) - 1, day === 229 ? 28 : dayOf(day)));
  date.setUTCDate(date.getUTCDate() + by);
  return (date.getUTCMonth() + 1) * 100 + date.getUTCDate();
}
export const dayAfter = (day: MonthDay): MonthDay => shifted(day, 1);
export const dayBefore = (day: MonthDay): MonthDay => shifted(day, -1);

/** Whether a day lies from one date up to another, over the new year too; from a date to the same date no day does. */
export const isWithin = (day: MonthDay, from: MonthDay, to: MonthDay): boolean => (from <= to ? day >= from && day < to : day >= from || day < to);
/** From the first day of a year to past its last. */
export const wholeYear = { from: 101, to: 1232 } as const satisfies Readonly<Record<string, MonthDay>>;

/** The first day of some weather, for those who go on from it. */
export function firstDayOf({ year, monthDay }: Calendar): FirstDay {
  const first = needThere('firstDayOf', 'first day', monthDay[0]);
  return { year: needThere('firstDayOf', 'first day', year[0]), month: monthOf(first), day: dayOf(first) };
}
