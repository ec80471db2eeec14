import { need } from '../need.ts';

/**
 * Dead standing feed left after some months of weather: M (1 - p t / 100), with M = `startLbPerAc`, p = `lossPercentPerMonth` of the start, t =
 * `months`; never below 0. Trials print the loss as a share of the peak a month, so it is a straight line, not compound.
 * @param options.startLbPerAc - Feed when growth stopped, lb of dry matter per acre; at least 0
 * @param options.lossPercentPerMonth - Loss, percent of the start for each month; at least 0, at most 100
 * @param options.months - Months since growth stopped, months; at least 0
 * @returns Feed left, lb per acre
 * @throws RangeError if a value is outside its range
 * @source larsen-2021, fractional losses, seasonal and monthly
 * @example standingFeedLeft({ startLbPerAc: 2000, lossPercentPerMonth: 7, months: 5 }) //=> 1300
 */
export function standingFeedLeft({
  startLbPerAc,
  lossPercentPerMonth,
  months,
}: {
  readonly startLbPerAc: number;
  readonly lossPercentPerMonth: number;
  readonly months: number;
}): number {
  need('standingFeedLeft', 'startLbPerAc', startLbPerAc, { atLeast: 0 });
  need('standingFeedLeft', 'lossPercentPerMonth', lossPercentPerMonth, { atLeast: 0, atMost: 100 });
  need('standingFeedLeft', 'months', months, { atLeast: 0 });
  return startLbPerAc * Math.max(0, 1 - (lossPercentPerMonth * months) / 100);
}
