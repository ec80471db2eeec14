import { need, needThere } from '../need.ts';
import { periodMonths, sameDayLater, yearOfDay } from './periodMonths.ts';
import { type RainByDay, rainBetween } from './rainByDay.ts';

/** Rain of a period, and whether each of its months was read well enough to count. */
export interface PeriodRain {
  readonly rain: number;
  readonly unreadDays: number;
  readonly isFull: boolean;
}

/**
 * Rain of the months that end with a day, with the record `table`, `lastDay`, `months`, `leastShare`. What fell on days that nobody read is not in
 * it, and is not made up.
 * @param options.table - Record as `rainByDay` lays it out
 * @param options.lastDay - Day number of the last day; a whole number
 * @param options.months - Length of the period, months; a whole number, at least 1
 * @param options.leastShare - Share of a month's days that must have been read; above 0, at most 1
 * @returns Rain, unit of the record; days not read; whether every month was read well enough
 * @throws RangeError if a parameter is outside its range
 * @source common practice
 * @example periodRain({ table: { firstDay: 0, lastDay: 0, rainBefore: [0, 1], daysReadBefore: [0, 1] }, lastDay: 30, months: 1, leastShare: 0.9 }) //=> ({ rain: 1, unreadDays: 30, isFull: false })
 */
export function periodRain({
  table,
  lastDay,
  months,
  leastShare,
}: {
  readonly table: RainByDay;
  readonly lastDay: number;
  readonly months: number;
  readonly leastShare: number;
}): PeriodRain {
  need('periodRain', 'leastShare', leastShare, { above: 0, atMost: 1 });
  const parts = periodMonths(lastDay, months);
  let [rain, unreadDays, isFull] = [0, 0, true];
  for (const part of parts) {
    const days = part.lastDay - part.firstDay + 1;
    const read = rainBetween(table, part.firstDay, part.lastDay);
    rain += read.rain;
    unreadDays += days - read.daysRead;
    // The dust of a division must not turn nine days of ten away.
    isFull = isFull && read.daysRead >= leastShare * days - 1e-9;
  }
  return { rain: Number(rain.toFixed(9)), unreadDays, isFull };
}

/** The same period in one of the years of a record. */
export interface YearsPeriod extends PeriodRain {
  /** Year in which the period ends. */
  readonly year: number;
  readonly lastDay: number;
}

/**
 * The same period in each year that a record covers whole, with the record `table`, `lastDay`, `months`, `leastShare`.
 * @param options.table - Record as `rainByDay` lays it out
 * @param options.lastDay - Day number on which the period ends in one of the years; a whole number
 * @param options.months - Length of the period, months; a whole number, at least 1
 * @param options.leastShare - Share of a month's days that must have been read; above 0, at most 1
 * @returns Periods in order of years, those with too many days unread among them
 * @throws RangeError if a parameter is outside its range
 * @source common practice
 * @example samePeriods({ table: { firstDay: 0, lastDay: 30, rainBefore: new Float64Array(32), daysReadBefore: Int32Array.from({ length: 32 }, (_, day) => day) }, lastDay: 395, months: 1, leastShare: 1 }).map(({ year }) => year) //=> [1970]
 */
export function samePeriods({
  table,
  lastDay,
  months,
  leastShare,
}: {
  readonly table: RainByDay;
  readonly lastDay: number;
  readonly months: number;
  readonly leastShare: number;
}): YearsPeriod[] {
  const year = yearOfDay(lastDay);
  const found: YearsPeriod[] = [];
  for (let each = yearOfDay(table.firstDay); each <= yearOfDay(table.lastDay); each += 1) {
    const end = sameDayLater(lastDay, each - year);
    const start = needThere('samePeriods', 'first month', periodMonths(end, months)[0]).firstDay;
    if (start < table.firstDay || end > table.lastDay) continue;
    found.push({ year: each, lastDay: end, ...periodRain({ table, lastDay: end, months, leastShare }) });
  }
  return found;
}
