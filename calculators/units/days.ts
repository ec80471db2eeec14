/** Milliseconds in a day: a day number counts days since 1970-01-01. */
export const dayMs = 86_400_000;
export const yearOf = (day: number): number => new Date(day * dayMs).getUTCFullYear();
/** 0 for January. */
export const monthIndexOf = (day: number): number => new Date(day * dayMs).getUTCMonth();
/** First day of a month; an index past December runs on into the next year. */
export const firstOfMonth = (monthIndex: number, year: number): number => Date.UTC(year, monthIndex, 1) / dayMs;
const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
/** Days of a month, 1 for January; 0 where there is no such month. */
export const daysInMonth = (year: number, month: number): number =>
  month === 2 && year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : (lengths[month - 1] ?? 0);
/** The same month and day in another year; Feb 29 is Feb 28 where there is none. */
export const sameDayIn = (day: number, year: number): number => {
  const month = monthIndexOf(day);
  return Math.min(day - firstOfMonth(month, yearOf(day)) + firstOfMonth(month, year), firstOfMonth(month + 1, year) - 1);
};
/** The date on a calendar where the device is, whatever day it is in Greenwich. */
export const localDay = (now: Date): number => Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / dayMs;
