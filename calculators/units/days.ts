/** Milliseconds in a day: a day number counts days since 1970-01-01. */
export const dayMs = 86_400_000;
export const yearOf = (day: number): number => new Date(day * dayMs).getUTCFullYear();
/** 0 for January. */
export const monthIndexOf = (day: number): number => new Date(day * dayMs).getUTCMonth();
/** First day of a month; an index past December runs on into the next year. */
export const firstOfMonth = (monthIndex: number, year: number): number => Date.UTC(year, monthIndex, 1) / dayMs;
/** The same month and day in another year; Feb 29 is Feb 28 where there is none. */
export const sameDayIn = (day: number, year: number): number => {
  const month = monthIndexOf(day);
  return Math.min(day - firstOfMonth(month, yearOf(day)) + firstOfMonth(month, year), firstOfMonth(month + 1, year) - 1);
};
/** The date on a calendar where the device is, whatever day it is in Greenwich. */
export const localDay = (now: Date): number => Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / dayMs;
