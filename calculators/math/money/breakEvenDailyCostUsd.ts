import { type KeepOrRebuy, keepAgainstRebuyUsd } from './keepAgainstRebuyUsd.ts';

/**
 * Daily cost at which keeping and rebuying cost the same: c = (B + b − P − I − a t / 365 − B m t / 36,500 + v) / t, letters as in
 * `keepAgainstRebuyUsd`. If she can be fed for less, keep her.
 * @param cow - One cow, as in `keepAgainstRebuyUsd`, without its daily cost
 * @returns Cost, dollars a day; 0 or below means that selling is cheaper even with free feed
 * @throws RangeError if a value is outside its range
 * @source jones-keep-or-sell-2011, factors to consider, solved for the daily cost
 * @example breakEvenDailyCostUsd({ days: 200, calfIncomeUsd: 0, agingUsdPerYear: 0, deathLossPercentPerYear: 0, saleUsd: 1100, saleCostsUsd: 0, interestPercentPerYear: 0, buyBackUsd: 1600, buyBackCostsUsd: 0 }) //=> 2.5
 */
export function breakEvenDailyCostUsd(cow: Omit<KeepOrRebuy, 'dailyCostUsd'>): number {
  return keepAgainstRebuyUsd({ ...cow, dailyCostUsd: 0 }).keepAdvantageUsd / cow.days;
}
