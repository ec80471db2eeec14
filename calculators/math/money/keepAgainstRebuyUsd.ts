import { need } from '../need.ts';
import { simpleInterestUsd } from './simpleInterestUsd.ts';

/** One cow, fed through or sold and bought back. */
export interface KeepOrRebuy {
  readonly days: number;
  readonly dailyCostUsd: number;
  readonly calfIncomeUsd: number;
  readonly agingUsdPerYear: number;
  readonly deathLossPercentPerYear: number;
  readonly saleUsd: number;
  readonly saleCostsUsd: number;
  readonly interestPercentPerYear: number;
  readonly buyBackUsd: number;
  readonly buyBackCostsUsd: number;
}

/**
 * Feed one cow through, or sell her now and buy back after t = `days`. Keeping costs K = c t + a t / 365 + B m t / 36,500 − v; selling costs
 * R = B + b − P − I, with P = S − s and I the interest on P. Here c = `dailyCostUsd`, a = `agingUsdPerYear`, m = `deathLossPercentPerYear`,
 * v = `calfIncomeUsd`, S = `saleUsd`, s = `saleCostsUsd`, B = `buyBackUsd`, b = `buyBackCostsUsd`. The answer hangs most on v: it is given with and without.
 * @param options.days - Time until she would be bought back, days; above 0, at most 1,500
 * @param options.dailyCostUsd - Feed and other costs that end when she is sold, dollars a day; 0 or more. No overhead: it stays either way
 * @param options.calfIncomeUsd - Calf sold before the buy-back, times the share of cows that wean one, dollars; 0 or more, 0 if none is sold in that time
 * @param options.agingUsdPerYear - Worth that the kept cow loses by growing older than the one bought back, dollars a year; 0 or more
 * @param options.deathLossPercentPerYear - Cows that die in a year, percent; 0 to 100
 * @param options.saleUsd - What she brings today, dollars; 0 or more
 * @param options.saleCostsUsd - Commission, hauling, shrink and tax on the sale, dollars; 0 to `saleUsd`
 * @param options.interestPercentPerYear - Interest earned or saved on the money, percent a year; 0 to 100
 * @param options.buyBackUsd - Price of a cow like her at the end, dollars; 0 or more
 * @param options.buyBackCostsUsd - Commission, hauling, testing and losses while she settles, dollars; 0 or more
 * @returns Cost of keeping, cost of selling and buying back, and how much cheaper keeping is with and without the calf, dollars a cow
 * @throws RangeError if a value is outside its range
 * @source jones-keep-or-sell-2011, factors to consider
 * @example keepAgainstRebuyUsd({ days: 270, dailyCostUsd: 2.8, calfIncomeUsd: 0, agingUsdPerYear: 0, deathLossPercentPerYear: 0, saleUsd: 1100, saleCostsUsd: 0, interestPercentPerYear: 5, buyBackUsd: 1600, buyBackCostsUsd: 0 }).keepAdvantageUsd //=> -296.68
 */
export function keepAgainstRebuyUsd({
  days,
  dailyCostUsd,
  calfIncomeUsd,
  agingUsdPerYear,
  deathLossPercentPerYear,
  saleUsd,
  saleCostsUsd,
  interestPercentPerYear,
  buyBackUsd,
  buyBackCostsUsd,
}: KeepOrRebuy): {
  readonly keepingUsd: number;
  readonly interestUsd: number;
  readonly rebuyingUsd: number;
  readonly keepAdvantageUsd: number;
  readonly keepAdvantageWithoutCalfUsd: number;
} {
  const name = 'keepAgainstRebuyUsd';
  need(name, 'days', days, { above: 0, atMost: 1500 });
  need(name, 'dailyCostUsd', dailyCostUsd, { atLeast: 0 });
  need(name, 'calfIncomeUsd', calfIncomeUsd, { atLeast: 0 });
  need(name, 'agingUsdPerYear', agingUsdPerYear, { atLeast: 0 });
  need(name, 'deathLossPercentPerYear', deathLossPercentPerYear, { atLeast: 0, atMost: 100 });
  need(name, 'saleUsd', saleUsd, { atLeast: 0 });
  need(name, 'saleCostsUsd', saleCostsUsd, { atLeast: 0, atMost: saleUsd });
  need(name, 'buyBackUsd', buyBackUsd, { atLeast: 0 });
  need(name, 'buyBackCostsUsd', buyBackCostsUsd, { atLeast: 0 });
  const proceedsUsd = saleUsd - saleCostsUsd;
  const interestUsd = simpleInterestUsd(proceedsUsd, interestPercentPerYear, days);
  const keepingWithoutCalfUsd = dailyCostUsd * days + (agingUsdPerYear * days) / 365 + (buyBackUsd * deathLossPercentPerYear * days) / 36_500;
  const rebuyingUsd = buyBackUsd + buyBackCostsUsd - proceedsUsd - interestUsd;
  return {
    keepingUsd: keepingWithoutCalfUsd - calfIncomeUsd,
    interestUsd,
    rebuyingUsd,
    keepAdvantageUsd: rebuyingUsd - keepingWithoutCalfUsd + calfIncomeUsd,
    keepAdvantageWithoutCalfUsd: rebuyingUsd - keepingWithoutCalfUsd,
  };
}

/**
 * The same decision at a low, a likely and a high buy-back price.
 * @param cow - One cow, as in `keepAgainstRebuyUsd`; its own `buyBackUsd` is left out
 * @param lowUsd - Lowest buy-back price to reckon with, dollars; 0 or more
 * @param likelyUsd - Likely price, dollars; at least `lowUsd`
 * @param highUsd - Highest price to reckon with, dollars; at least `likelyUsd`
 * @returns How much cheaper keeping is at each price, with and without the calf, dollars a cow
 * @throws RangeError if the prices are out of order or a value is outside its range
 * @source our own, since nobody knows the price a year ahead
 * @example buyBackRange({ days: 270, dailyCostUsd: 2.8, calfIncomeUsd: 0, agingUsdPerYear: 0, deathLossPercentPerYear: 0, saleUsd: 1100, saleCostsUsd: 0, interestPercentPerYear: 0, buyBackCostsUsd: 0 }, 1400, 1600, 2000).map((row) => Math.round(row.keepAdvantageUsd)) //=> [-456, -256, 144]
 */
export function buyBackRange(
  cow: Omit<KeepOrRebuy, 'buyBackUsd'>,
  lowUsd: number,
  likelyUsd: number,
  highUsd: number,
): { readonly buyBackUsd: number; readonly keepAdvantageUsd: number; readonly keepAdvantageWithoutCalfUsd: number }[] {
  need('buyBackRange', 'likelyUsd', likelyUsd, { atLeast: lowUsd });
  need('buyBackRange', 'highUsd', highUsd, { atLeast: likelyUsd });
  return [lowUsd, likelyUsd, highUsd].map((buyBackUsd) => {
    const { keepAdvantageUsd, keepAdvantageWithoutCalfUsd } = keepAgainstRebuyUsd({ ...cow, buyBackUsd });
    return { buyBackUsd, keepAdvantageUsd, keepAdvantageWithoutCalfUsd };
  });
}
