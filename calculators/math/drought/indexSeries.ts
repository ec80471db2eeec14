import { need } from '../need.ts';
import { mostGammaShape } from '../special/regularizedIncompleteGamma.ts';
import { gammaFitThom } from './gammaFitThom.ts';
import { lastMonthEnd } from './periodMonths.ts';
import type { RainByDay } from './rainByDay.ts';
import { samePeriods } from './samePeriods.ts';
import { indexUnderGamma } from './standardizedPrecipitationIndex.ts';

/** Fewer years than that bear no fitted curve at all. */
const fewestYears = 10;
const fewestWet = 4;

/**
 * Whether a curve can be fitted to a record of one period: ten years or more, four or more of them with rain and not nearly all alike, with `record`.
 * @param record - Rain of the same period in each year, any one unit
 * @returns Whether the index can be had
 * @throws RangeError if a value is below 0
 * @source our own, the limits of the fit
 * @example bearsIndex([1, 2, 3]) //=> false
 */
export function bearsIndex(record: readonly number[]): boolean {
  for (const each of record) need('bearsIndex', 'record', each, { atLeast: 0 });
  const wet = record.filter((each) => each > 0);
  if (record.length < fewestYears || wet.length < fewestWet || Math.max(...wet) <= 1.001 * Math.min(...wet)) return false;
  return gammaFitThom(wet).shape <= mostGammaShape;
}

/** The index of the months that end with one month. */
export interface MonthsIndex {
  /** Day number of the month's last day. */
  readonly lastDay: number;
  readonly index: number;
}

/**
 * Standardized precipitation index of every month's end in a record, over the months before it, in unbroken runs: a month that was not read, or
 * whose calendar month bears no index, breaks the run. With the record `table`, `months`, `leastShare`; gamma by Thom's approximation.
 * @param options.table - Record as `rainByDay` lays it out
 * @param options.months - Months a sum; a whole number, at least 1
 * @param options.leastShare - Share of a month's days that must have been read; above 0, at most 1
 * @returns Runs of months in order, each with its index
 * @throws RangeError if a parameter is outside its range
 * @source edwards-mckee-1997, computation of the index
 * @example indexSeries({ table: { firstDay: 0, lastDay: 30, rainBefore: new Float64Array(32), daysReadBefore: new Int32Array(32) }, months: 1, leastShare: 1 }) //=> []
 */
export function indexSeries({
  table,
  months,
  leastShare,
}: {
  readonly table: RainByDay;
  readonly months: number;
  readonly leastShare: number;
}): MonthsIndex[][] {
  // Any twelve month ends in a row show each month of the calendar once.
  const ends: number[] = [];
  for (let end = lastMonthEnd(table.firstDay + 31); ends.length < 12; end = lastMonthEnd(end + 31)) ends.push(end);
  const calendar = ends.map((end) => {
    const full = samePeriods({ table, lastDay: end, months, leastShare }).filter(({ isFull }) => isFull);
    const record = full.map(({ rain }) => rain);
    if (!bearsIndex(record)) return [];
    // One curve a calendar month, fitted once for all its years.
    const wet = record.filter((rain) => rain > 0);
    const curve = { ...gammaFitThom(wet), zeroShare: 1 - wet.length / record.length };
    return full.map(({ lastDay, rain }) => [lastDay, indexUnderGamma({ ...curve, amount: rain })] as const);
  });
  const byEnd = new Map(calendar.flat());
  const runs: MonthsIndex[][] = [];
  let run: MonthsIndex[] = [];
  for (let end = lastMonthEnd(table.firstDay + 31); end <= table.lastDay; end = lastMonthEnd(end + 31)) {
    const index = byEnd.get(end);
    if (index !== undefined) run.push({ lastDay: end, index });
    else if (run.length > 0) {
      runs.push(run);
      run = [];
    }
  }
  return run.length > 0 ? [...runs, run] : runs;
}
