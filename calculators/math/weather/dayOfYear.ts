import { need } from '../need.ts';

/**
 * Number of the day in the year, J = INT(275 M / 9 − 30 + D) − 2, and 2 more before March, 1 more after February of a leap year,
 * with M = `month`, D = `day`.
 * @param month - Month, 1 to 12
 * @param day - Day of the month, 1 to 31
 * @param isLeapYear - Whether the year has a 29 February; no if left out
 * @returns Day of the year, 1 to 366
 * @throws RangeError if `month` or `day` is not a whole number in its range
 * @source allen-1998, annex 2, box 1
 * @example dayOfYear(7, 6) //=> 187
 */
export function dayOfYear(month: number, day: number, isLeapYear = false): number {
  need('dayOfYear', 'month', month, { atLeast: 1, atMost: 12, whole: true });
  need('dayOfYear', 'day', day, { atLeast: 1, atMost: 31, whole: true });
  const base = Math.floor((275 * month) / 9 - 30 + day) - 2;
  if (month < 3) return base + 2;
  return isLeapYear ? base + 1 : base;
}
