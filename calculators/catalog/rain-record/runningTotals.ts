import { periodMonths } from '../../math/drought/periodMonths.ts';
import { quantileType6 } from '../../math/drought/quantileType6.ts';
import { type RainByDay, rainBetween } from '../../math/drought/rainByDay.ts';
import type { YearsPeriod } from '../../math/drought/samePeriods.ts';

/** A short period is drawn in steps of some days, if the record is one of days. */
const fineMonths = 3;
const fineDays = 5;

/** Rain so far at each step of the period, in the year asked about and in every year, all laid on the days of that year. */
export function runningTotals({
  table,
  endsDay,
  months,
  years,
  isMonthly,
}: {
  readonly table: RainByDay;
  readonly endsDay: number;
  readonly months: number;
  readonly years: readonly YearsPeriod[];
  readonly isMonthly: boolean;
}) {
  const isFine = months <= fineMonths && !isMonthly;
  /** Steps of a period that ends with a day: as many in each year. */
  const stepsOf = (lastDay: number): readonly number[] => {
    const parts = periodMonths(lastDay, months);
    const before = (parts[0]?.firstDay ?? lastDay) - 1;
    if (!isFine) return [before, ...parts.map((part) => part.lastDay)];
    const count = Math.ceil((30 * months) / fineDays);
    return Array.from({ length: count + 1 }, (_, step) => before + Math.round((step * (lastDay - before)) / count));
  };
  const soFar = (lastDay: number): readonly number[] => {
    const [before = lastDay, ...steps] = stepsOf(lastDay);
    return [0, ...steps.map((step) => (step > before ? rainBetween(table, before + 1, step).rain : 0))];
  };
  const steps = stepsOf(endsDay);
  const own = soFar(endsDay);
  // Counted from the end: where the period begins within a February, one year may have a step more than another.
  const others = years.map(({ year, lastDay }) => ({ year, list: soFar(lastDay) }));
  const sumOf = (list: readonly number[], step: number): number => {
    const sum = list.at(step - steps.length);
    if (sum === undefined) throw new RangeError(`no rain so far at step ${step}`);
    return sum;
  };
  const running = steps.map((stepDay, step) => {
    const all = others.map(({ list }) => sumOf(list, step));
    return {
      stepDay,
      thisIn: sumOf(own, step),
      middleIn: quantileType6(all, 0.5),
      leastIn: Math.min(...all),
      mostIn: Math.max(...all),
    };
  });
  const everyYear = others.flatMap(({ year, list }) => steps.map((onDay, step) => ({ ofYear: String(year), onDay, sumIn: sumOf(list, step) })));
  return { running, everyYear };
}
