import { dayMs, daysInMonth } from '../../units/days.ts';
import { isMonth, monthNumber } from '../../units/months.ts';
import { longestRead } from './limits.ts';

/** 1 to 12 for `Mar`, `march`, `sept.`; nothing for other words. */
export function monthNamed(word: string): number | undefined {
  const key = word.trim().slice(0, 3).toLowerCase();
  return isMonth(key) && /^[a-z]{3,9}\.?$/i.test(word.trim()) ? monthNumber(key) : undefined;
}

/** A date as its cell gives it. While it is open, `one` and `two` are month and day in an order that the whole column must tell. */
export interface DateParts {
  readonly year: number;
  readonly one: number;
  /** 0: the cell names a month, not a day. */
  readonly two: number;
  readonly isOpen: boolean;
}
const known = (year: string, month: number, day: number): DateParts => ({ year: Number(year), one: month, two: day, isOpen: false });
/** Two digits: this century up to 49, the last one from 50. */
const fullYear = (text: string): string => (text.length > 2 ? text : Number(text) < 50 ? `20${text}` : `19${text}`);

const iso = /^(\d{4})([-/.])(\d{1,2})(?:\2(\d{1,2}))?(?:[T ].*)?$/;
const run = /^((?:1[89]|20)\d\d)(\d\d)(\d\d)$/;
const slashes = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})(?:[T ].*)?$/;
const monthYear = /^(\d{1,2})[-/](\d{4})$/;
const dayNamed = /^(\d{1,2})[- .]+([a-z]{3,9})[-., ]+(\d{4}|\d{2})$/i;
const nameFirst = /^([a-z]{3,9})[. ]+(\d{1,2}),?\s+(\d{4})$/i;
const nameYear = /^([a-z]{3,9})[-., ]+(\d{4})$/i;
const weekday = /^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*[., ]+/i;

/** One cell as a date, or nothing. */
export function datePartsIn(cell: string): DateParts | undefined {
  const text = cell.trim();
  if (text.length > longestRead) return undefined;
  let found = iso.exec(text);
  if (found) return known(found[1] ?? '', Number(found[3]), Number(found[4] ?? 0));
  found = slashes.exec(text);
  if (found) {
    const [one, two] = [Number(found[1]), Number(found[3])];
    const year = fullYear(found[4] ?? '');
    // With points the day stands first, in every country that writes so.
    return found[2] === '.' ? known(year, two, one) : { year: Number(year), one, two, isOpen: true };
  }
  found = run.exec(text);
  if (found) return known(found[1] ?? '', Number(found[2]), Number(found[3]));
  found = monthYear.exec(text);
  if (found) return known(found[2] ?? '', Number(found[1]), 0);
  if (!/[a-z]/i.test(text)) return undefined;
  const plain = text.replace(weekday, '');
  found = dayNamed.exec(plain);
  const [dayMonth, firstMonth] = [monthNamed(found?.[2] ?? ''), monthNamed((nameFirst.exec(plain) ?? nameYear.exec(plain))?.[1] ?? '')];
  if (found && dayMonth !== undefined) return known(fullYear(found[3] ?? ''), dayMonth, Number(found[1]));
  if (firstMonth === undefined) return undefined;
  found = nameFirst.exec(plain);
  return found ? known(found[3] ?? '', firstMonth, Number(found[2])) : known(nameYear.exec(plain)?.[2] ?? '', firstMonth, 0);
}

/** Day number, or nothing where the calendar has no such day. */
export function dayNumber(year: number, month: number, day: number): number | undefined {
  if (year < 1700 || year > 2200 || month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return undefined;
  return Date.UTC(year, month - 1, day) / dayMs;
}

export type DateOrder = 'month-first' | 'day-first';
/** What the open dates of a column tell of their order: one above 12 settles it. Nothing where none does, or where they contradict. */
export function orderOf(dates: readonly (DateParts | undefined)[]): DateOrder | undefined {
  const open = dates.filter((date) => date?.isOpen === true);
  const isDayFirst = open.some((date) => date !== undefined && date.one > 12);
  const isMonthFirst = open.some((date) => date !== undefined && date.two > 12);
  if (isDayFirst === isMonthFirst) return undefined;
  return isDayFirst ? 'day-first' : 'month-first';
}
