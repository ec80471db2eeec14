import { need } from '../need.ts';

/**
 * Years are counted from March, so that a leap day ends its year; 146,097 days are 400 years. The calendar's own objects take ten times as long,
 * and a long record asks some ten thousand times.
 */
const daysTo1970 = 719_468;
function dayNumber(year: number, month: number, day: number): number {
  const months = 12 * year + month;
  const [wholeYear, ofYear] = [Math.floor(months / 12), months - 12 * Math.floor(months / 12)];
  const fromMarch = ofYear < 2 ? wholeYear - 1 : wholeYear;
  const marchMonth = (ofYear + 10) % 12;
  const leapDays = Math.floor(fromMarch / 4) - Math.floor(fromMarch / 100) + Math.floor(fromMarch / 400);
  return 365 * fromMarch + leapDays + Math.floor((153 * marchMonth + 2) / 5) + day - 1 - daysTo1970;
}
function partsOf(day: number): { readonly year: number; readonly month: number; readonly day: number } {
  const all = day + daysTo1970;
  const era = Math.floor(all / 146_097);
  const ofEra = all - 146_097 * era;
  const yearOfEra = Math.floor((ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) / 365);
  const ofYear = ofEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * ofYear + 2) / 153);
  const month = (marchMonth + 2) % 12;
  return { year: yearOfEra + 400 * era + (month < 2 ? 1 : 0), month, day: ofYear - Math.floor((153 * marchMonth + 2) / 5) + 1 };
}
/** Months count from 0, as in the calendar's own objects; a month past December is one of the next year. */
const daysIn = (year: number, month: number): number => dayNumber(year, month + 1, 1) - dayNumber(year, month, 1);

/** A month, or the part of one that belongs to a period. */
export interface PeriodMonth {
  /** Day numbers, both in it. */
  readonly firstDay: number;
  readonly lastDay: number;
  /** 1 to 12. */
  readonly month: number;
  /** Days of the whole month. */
  readonly monthDays: number;
}

/**
 * Cuts the period of so many months that ends with a day into its calendar months, with `lastDay`, `months`. A period that ends with a month holds
 * whole months; another begins and ends within one. A day that a month lacks becomes its last.
 * @param lastDay - Day number of the last day; a whole number
 * @param months - Length of the period, months; a whole number, at least 1
 * @returns Months of the period in order, the first and the last perhaps in part
 * @throws RangeError if a parameter is outside its range
 * @source our own, the calendar
 * @example periodMonths(58, 1) //=> [{ firstDay: 31, lastDay: 58, month: 2, monthDays: 28 }]
 */
export function periodMonths(lastDay: number, months: number): PeriodMonth[] {
  need('periodMonths', 'lastDay', lastDay, { whole: true });
  need('periodMonths', 'months', months, { atLeast: 1, whole: true });
  const end = partsOf(lastDay);
  const isWhole = end.day === daysIn(end.year, end.month);
  const before = partsOf(dayNumber(end.year, end.month - months, 1));
  const firstDay = isWhole
    ? dayNumber(before.year, before.month + 1, 1)
    : dayNumber(before.year, before.month, Math.min(end.day, daysIn(before.year, before.month))) + 1;
  const list: PeriodMonth[] = [];
  for (let from = firstDay; from <= lastDay; ) {
    const { year, month } = partsOf(from);
    const to = Math.min(lastDay, dayNumber(year, month + 1, 1) - 1);
    list.push({ firstDay: from, lastDay: to, month: month + 1, monthDays: daysIn(year, month) });
    from = to + 1;
  }
  return list;
}

/**
 * The same day of the calendar in another year, with `day`, `years`: the last of a month stays the last of a month.
 * @param day - Day number; a whole number
 * @param years - Years later; a whole number, negative for earlier
 * @returns Day number
 * @throws RangeError if a parameter is not whole
 * @source our own, the calendar
 * @example sameDayLater(58, 2) //=> 789
 */
export function sameDayLater(day: number, years: number): number {
  need('sameDayLater', 'day', day, { whole: true });
  need('sameDayLater', 'years', years, { whole: true });
  const { year, month, day: inMonth } = partsOf(day);
  const isLast = inMonth === daysIn(year, month);
  const most = daysIn(year + years, month);
  return dayNumber(year + years, month, isLast ? most : Math.min(inMonth, most));
}

/**
 * Last day of the month before the one after it: the day itself if it ends a month, else the end of the month before, with `day`.
 * @param day - Day number; a whole number
 * @returns Day number of the last month's end that is not after it
 * @throws RangeError if `day` is not whole
 * @source our own, the calendar
 * @example lastMonthEnd(40) //=> 30
 */
export function lastMonthEnd(day: number): number {
  need('lastMonthEnd', 'day', day, { whole: true });
  const { year, month, day: inMonth } = partsOf(day);
  return inMonth === daysIn(year, month) ? day : dayNumber(year, month, 1) - 1;
}

/**
 * Year of the calendar in which a day falls, with `day`.
 * @param day - Day number; a whole number
 * @returns Year
 * @throws RangeError if `day` is not whole
 * @source our own, the calendar
 * @example yearOfDay(-1) //=> 1969
 */
export function yearOfDay(day: number): number {
  need('yearOfDay', 'day', day, { whole: true });
  return partsOf(day).year;
}
