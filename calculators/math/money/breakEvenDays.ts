import { need } from '../need.ts';
import { type KeepOrRebuy, keepAgainstRebuyUsd } from './keepAgainstRebuyUsd.ts';

/**
 * Days of feeding at which keeping and rebuying cost the same: t = (B + b − P + v) / (c + a / 365 + B m / 36,500 + P r / 36,500), letters as in
 * `keepAgainstRebuyUsd`, r the interest rate. Under it keeping is cheaper. At 0 or below, selling wins from the first day.
 * @param cow - One cow, as in `keepAgainstRebuyUsd`, without its days. A calf is counted only if it is sold within the answer
 * @returns Days; may be negative
 * @throws RangeError if a value is outside its range, or waiting costs nothing a day, so that no day is the last
 * @source jones-keep-or-sell-2011, factors to consider, solved for the days
 * @example breakEvenDays({ dailyCostUsd: 2.5, calfIncomeUsd: 0, agingUsdPerYear: 0, deathLossPercentPerYear: 0, saleUsd: 1100, saleCostsUsd: 0, interestPercentPerYear: 0, buyBackUsd: 1600, buyBackCostsUsd: 0 }) //=> 200
 */
export function breakEvenDays(cow: Omit<KeepOrRebuy, 'days'>): number {
  // The difference is a straight line in the days: two points of it give the crossing, with no second copy of the formula.
  const first = keepAgainstRebuyUsd({ ...cow, days: 1 }).keepAdvantageUsd;
  const perDayUsd = first - keepAgainstRebuyUsd({ ...cow, days: 2 }).keepAdvantageUsd;
  need('breakEvenDays', 'the cost of waiting a day', perDayUsd, { above: 0 });
  return 1 + first / perDayUsd;
}
