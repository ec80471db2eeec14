import { need } from '../need.ts';
import { type KeepOrRebuy, keepAgainstRebuyUsd } from './keepAgainstRebuyUsd.ts';

/**
 * Buy-back price at which keeping and rebuying cost the same: B = (P + I − b + c t + a t / 365 − v) / (1 − m t / 36,500), letters as in
 * `keepAgainstRebuyUsd`. If cows will cost more than this, keep her.
 * @param cow - One cow, as in `keepAgainstRebuyUsd`, without its buy-back price
 * @returns Price, dollars; 0 or below means that keeping is cheaper at any price
 * @throws RangeError if a value is outside its range, or every cow would die in the time
 * @source jones-keep-or-sell-2011, factors to consider, solved for the price
 * @example breakEvenBuyBackUsd({ days: 200, dailyCostUsd: 2.5, calfIncomeUsd: 0, agingUsdPerYear: 0, deathLossPercentPerYear: 0, saleUsd: 1100, saleCostsUsd: 0, interestPercentPerYear: 0, buyBackCostsUsd: 0 }) //=> 1600
 */
export function breakEvenBuyBackUsd(cow: Omit<KeepOrRebuy, 'buyBackUsd'>): number {
  const atNothing = keepAgainstRebuyUsd({ ...cow, buyBackUsd: 0 }).keepAdvantageUsd;
  const perDollar = keepAgainstRebuyUsd({ ...cow, buyBackUsd: 1 }).keepAdvantageUsd - atNothing;
  need('breakEvenBuyBackUsd', 'the share of cows alive at the end', perDollar, { above: 0 });
  return -atNothing / perDollar;
}
