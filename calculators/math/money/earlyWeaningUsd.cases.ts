import { checkList } from '../checks.ts';
import { earlyWeaningUsd } from './earlyWeaningUsd.ts';

const noble = { source: 'noble-early-weaning-1998', where: 'calves weaned on 18 June', seen: 'print' } as const;

/** Steers of 235 lb at $1.00 and heifers of 220 lb at $0.85, sold the day that they were weaned: no forage, no interest. */
const sold = (weightLb: number, priceUsdPerCwt: number) =>
  earlyWeaningUsd({
    days: 118,
    earlyWeightLb: weightLb,
    earlyPriceUsdPerCwt: priceUsdPerCwt,
    usualWeightLb: weightLb + 200,
    usualPriceUsdPerCwt: priceUsdPerCwt - 20,
    fedGainLbPerDay: 0,
    calfFeedUsdPerDay: 0,
    weaningCostUsd: 0,
    sparedLb: 0,
    forageUsdPerTon: 0,
    interestPercentPerYear: 0,
  }).sellEarlyUsd;
const meanUsd = () => (16 * sold(235, 100) + 27 * sold(220, 85)) / 43;

export default checkList('earlyWeaningUsd', [
  { what: '16 steers and 27 heifers sold at 67 days, dollars a head', ours: meanUsd, printed: '205', ...noble },
  { what: 'the same, dollars a lb', ours: () => meanUsd() / ((16 * 235 + 27 * 220) / 43), printed: '0.91', ...noble },
  { what: 'the same against $320 of cow cost, dollars a head', ours: () => 320 - meanUsd(), printed: '115', ...noble },
]);
