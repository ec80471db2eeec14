import { need } from '../need.ts';

/** Mean length of a month, days: 365.25 / 12. */
const daysPerMonth = 30.4375;

/**
 * Days that standing feed lasts while what is not yet grazed weathers: T = (1 - exp(-k E / D)) / k, with E = `eatenLb` if it were eaten at once, D
 * = `dailyDemandLb`, k = `lossPercentPerMonth` / 100 a month, in days. Each day's strip carries less than the day's before; without loss T = E / D.
 * @param options.eatenLb - Feed that would be eaten if all were grazed today, lb of dry matter; at least 0
 * @param options.dailyDemandLb - Dry matter that the herd eats, lb per day; above 0
 * @param options.lossPercentPerMonth - Loss, percent of the start for each month; at least 0, at most 100
 * @returns Grazing, days
 * @throws RangeError if a value is outside its range
 * @source our own, acres grazed a day with a straight-line loss of larsen-2021
 * @example standingFeedDays({ eatenLb: 100000, dailyDemandLb: 1000, lossPercentPerMonth: 7 }) //=> 89.3
 */
export function standingFeedDays({
  eatenLb,
  dailyDemandLb,
  lossPercentPerMonth,
}: {
  readonly eatenLb: number;
  readonly dailyDemandLb: number;
  readonly lossPercentPerMonth: number;
}): number {
  need('standingFeedDays', 'eatenLb', eatenLb, { atLeast: 0 });
  need('standingFeedDays', 'dailyDemandLb', dailyDemandLb, { above: 0 });
  need('standingFeedDays', 'lossPercentPerMonth', lossPercentPerMonth, { atLeast: 0, atMost: 100 });
  const daysWithoutLoss = eatenLb / dailyDemandLb;
  const lossPerDay = lossPercentPerMonth / 100 / daysPerMonth;
  // Below this the loss cannot be told from none, and the quotient of two vanishing numbers is not finite.
  if (lossPerDay * daysWithoutLoss < 1e-12) return daysWithoutLoss;
  return -Math.expm1(-lossPerDay * daysWithoutLoss) / lossPerDay;
}
