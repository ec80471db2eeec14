import { need, needThere } from '../need.ts';
import { sumOf } from '../special/sumOf.ts';

/** Last day of each month in a year of 365 days, with the day before it all. */
const monthEnds = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365] as const;

/** Day of the year before each month, and its days. */
const months = monthEnds.slice(1).map((end, index) => {
  const start = needThere('grownShare', `start of month ${index + 1}`, monthEnds[index]);
  return { start, end, days: end - start };
});

/**
 * Growth on a day of a monthly curve: G = Y c / (100 n), with Y = `yearLbPerAc`, c the share of that day's month in `curvePercent`, n the days of
 * the month.
 * @param options.yearLbPerAc - Growth of the whole year, lb of dry matter per acre; at least 0
 * @param options.curvePercent - Twelve shares of the year, January first, percent; each at least 0, together 100
 * @param options.dayOfYear - Day, 1 to 365
 * @returns Growth, lb per acre and day
 * @throws RangeError if a value is outside its range or the shares do not sum to 100
 * @source common practice
 * @example dailyGrowthLbPerAc({ yearLbPerAc: 3000, curvePercent: [0, 0, 0, 5, 40, 35, 10, 5, 5, 0, 0, 0], dayOfYear: 135 }) //=> 38.7
 */
export function dailyGrowthLbPerAc({
  yearLbPerAc,
  curvePercent,
  dayOfYear,
}: {
  readonly yearLbPerAc: number;
  readonly curvePercent: readonly number[];
  readonly dayOfYear: number;
}): number {
  need('dailyGrowthLbPerAc', 'yearLbPerAc', yearLbPerAc, { atLeast: 0 });
  need('dailyGrowthLbPerAc', 'dayOfYear', dayOfYear, { atLeast: 1, atMost: 365, whole: true });
  needCurve('dailyGrowthLbPerAc', curvePercent);
  const at = months.findIndex(({ end }) => dayOfYear <= end);
  const { days } = needThere('dailyGrowthLbPerAc', 'month', months[at]);
  return (yearLbPerAc * needThere('dailyGrowthLbPerAc', 'share of the month', curvePercent[at])) / 100 / days;
}

/**
 * Share of a year's growth that has come by the end of a day, of a year that begins with any month: the months before it and the days of its own
 * month in proportion.
 * @param curvePercent - Twelve shares of the year, January first, percent; each at least 0, together 100
 * @param dayOfYear - Day, 0 (before January 1) to 365
 * @param firstMonth - Month with which the year of growth begins, 1 to 12. The day before it is the last of that year, but day 0 is before the year of January
 * @returns Share of the year's growth, no unit, 0 to 1
 * @throws RangeError if a value is outside its range or the shares do not sum to 100
 * @source common practice
 * @example grownShare([0, 0, 0, 5, 40, 35, 10, 5, 5, 0, 0, 0], 181) //=> 0.80
 * @example grownShare([35, 10, 5, 5, 0, 0, 0, 0, 0, 0, 5, 40], 31, 11) //=> 0.80
 */
export function grownShare(curvePercent: readonly number[], dayOfYear: number, firstMonth = 1): number {
  need('grownShare', 'dayOfYear', dayOfYear, { atLeast: 0, atMost: 365 });
  need('grownShare', 'firstMonth', firstMonth, { atLeast: 1, atMost: 12, whole: true });
  needCurve('grownShare', curvePercent);
  const first = needThere('grownShare', `month ${firstMonth}`, months[firstMonth - 1]);
  const isInNextYear = firstMonth > 1 && dayOfYear <= first.start;
  const grownPercent = [...curvePercent.keys()].reduce((sum, ahead) => {
    const index = (firstMonth - 1 + ahead) % 12;
    const { start, days } = needThere('grownShare', `month ${index + 1}`, months[index]);
    // Days of the calendar of the year in which this month lies.
    const day = dayOfYear + (isInNextYear ? 365 : 0) - (index < firstMonth - 1 ? 365 : 0);
    return sum + needThere('grownShare', 'share', curvePercent[index]) * Math.min(1, Math.max(0, (day - start) / days));
  }, 0);
  return grownPercent / 100;
}

function needCurve(name: string, curvePercent: readonly number[]): void {
  need(name, 'curvePercent.length', curvePercent.length, { atLeast: 12, atMost: 12 });
  for (const sharePercent of curvePercent) need(name, 'curvePercent', sharePercent, { atLeast: 0 });
  const sum = sumOf(curvePercent, (sharePercent) => sharePercent);
  need(name, 'sum of curvePercent', sum, { atLeast: 99.999, atMost: 100.001 });
}
