import { need } from '../need.ts';
import { simpleInterestUsd } from './simpleInterestUsd.ts';
import { slideUsdPerCwt, slidPriceUsdPerCwt } from './slidPriceUsdPerCwt.ts';

/**
 * Three ways with one calf, counted to the usual weaning day: wean then; wean early and sell at once; wean early and feed it until that day.
 * Prices at every weight lie on the line through the two quotes, so that a heavier calf brings less a pound. The forage spared is credited to both early ways.
 * @param options.days - Days between the early and the usual weaning, days; above 0
 * @param options.earlyWeightLb - Weight of the calf today, lb; above 0
 * @param options.earlyPriceUsdPerCwt - Quote for that weight, dollars per hundred lb; 0 or more
 * @param options.usualWeightLb - Weight at the usual weaning, lb; above `earlyWeightLb`
 * @param options.usualPriceUsdPerCwt - Quote for that weight, same day, dollars per hundred lb; 0 or more
 * @param options.fedGainLbPerDay - Gain of the calf if fed apart, lb a day; 0 or more
 * @param options.calfFeedUsdPerDay - Feed and care of the calf if fed apart, dollars a day; 0 or more
 * @param options.weaningCostUsd - Vaccine, pen, sickness and death of early weaning, dollars a calf; 0 or more
 * @param options.sparedLb - Dry matter that cow and calf spare, lb, from `earlyWeaningFeedLb`; 0 or more
 * @param options.forageUsdPerTon - What a ton of that dry matter is worth this year, dollars per ton; 0 or more
 * @param options.interestPercentPerYear - Interest on the calf money in hand early, percent a year; 0 to 100
 * @returns What is left of the calf each way and the worth of the forage spared, dollars a pair
 * @throws RangeError if a value is outside its range
 * @source noble-early-weaning-1998, projected budget
 * @example earlyWeaningUsd({ days: 90, earlyWeightLb: 350, earlyPriceUsdPerCwt: 180, usualWeightLb: 500, usualPriceUsdPerCwt: 150, fedGainLbPerDay: 1.5, calfFeedUsdPerDay: 1.2, weaningCostUsd: 10, sparedLb: 891, forageUsdPerTon: 120, interestPercentPerYear: 0 }).sellEarlyUsd //=> 673.46
 */
export function earlyWeaningUsd({
  days,
  earlyWeightLb,
  earlyPriceUsdPerCwt,
  usualWeightLb,
  usualPriceUsdPerCwt,
  fedGainLbPerDay,
  calfFeedUsdPerDay,
  weaningCostUsd,
  sparedLb,
  forageUsdPerTon,
  interestPercentPerYear,
}: {
  readonly days: number;
  readonly earlyWeightLb: number;
  readonly earlyPriceUsdPerCwt: number;
  readonly usualWeightLb: number;
  readonly usualPriceUsdPerCwt: number;
  readonly fedGainLbPerDay: number;
  readonly calfFeedUsdPerDay: number;
  readonly weaningCostUsd: number;
  readonly sparedLb: number;
  readonly forageUsdPerTon: number;
  readonly interestPercentPerYear: number;
}): {
  readonly usualUsd: number;
  readonly sellEarlyUsd: number;
  readonly feedEarlyUsd: number;
  readonly sparedUsd: number;
  readonly fedWeightLb: number;
  readonly fedPriceUsdPerCwt: number;
} {
  const name = 'earlyWeaningUsd';
  need(name, 'days', days, { above: 0 });
  need(name, 'fedGainLbPerDay', fedGainLbPerDay, { atLeast: 0 });
  need(name, 'calfFeedUsdPerDay', calfFeedUsdPerDay, { atLeast: 0 });
  need(name, 'weaningCostUsd', weaningCostUsd, { atLeast: 0 });
  need(name, 'sparedLb', sparedLb, { atLeast: 0 });
  need(name, 'forageUsdPerTon', forageUsdPerTon, { atLeast: 0 });
  const slide = slideUsdPerCwt({
    lightWeightLb: earlyWeightLb,
    lightPriceUsdPerCwt: earlyPriceUsdPerCwt,
    heavyWeightLb: usualWeightLb,
    heavyPriceUsdPerCwt: usualPriceUsdPerCwt,
  });
  const fedWeightLb = earlyWeightLb + fedGainLbPerDay * days;
  const fedPriceUsdPerCwt = slidPriceUsdPerCwt({
    basePriceUsdPerCwt: usualPriceUsdPerCwt,
    baseWeightLb: usualWeightLb,
    weightLb: fedWeightLb,
    slideUsdPerCwt: slide,
  });
  const sparedUsd = (sparedLb * forageUsdPerTon) / 2000;
  const soldEarlyUsd = (earlyWeightLb * earlyPriceUsdPerCwt) / 100;
  return {
    usualUsd: (usualWeightLb * usualPriceUsdPerCwt) / 100,
    sellEarlyUsd: soldEarlyUsd + simpleInterestUsd(soldEarlyUsd, interestPercentPerYear, days) - weaningCostUsd + sparedUsd,
    feedEarlyUsd: (fedWeightLb * fedPriceUsdPerCwt) / 100 - calfFeedUsdPerDay * days - weaningCostUsd + sparedUsd,
    sparedUsd,
    fedWeightLb,
    fedPriceUsdPerCwt,
  };
}
