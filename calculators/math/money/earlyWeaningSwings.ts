import { oneAtATimeSwings } from './oneAtATimeSwings.ts';

/** How far the numbers that no quote or guide gives a range for are moved. */
const tenth = 0.1;
type Moved = 'market' | 'quote' | 'usual-weight' | 'guides' | 'forage' | 'weaning-cost' | 'feed';

interface EarlyCalf {
  readonly aheadDays: number;
  readonly movePercent: number;
  readonly earlyWeightLb: number;
  readonly earlyPriceUsdPerCwt: number;
  readonly usualWeightLb: number;
  readonly usualPriceUsdPerCwt: number;
  readonly weaningCostUsd: number;
  readonly interestPercent: number;
  readonly forageUsdPerTon: number;
  /** The calf on the usual day and what it costs a day until then, where it is fed and not sold. */
  readonly fed: { readonly weightLb: number; readonly priceUsdPerCwt: number; readonly usdPerDay: number } | undefined;
  readonly sparedLb: { readonly low: number; readonly likely: number; readonly high: number };
}

/**
 * How far each number by itself moves what weaning early leaves over the usual time, for one calf. The market and the forage spared have their own
 * ends; the others go a tenth either way.
 * @param calf - Weights (lb), quotes (dollars a hundred lb), costs, days, the market's move (percent), forage spared (lb of dry matter) and its worth (dollars a ton)
 * @returns Inputs with what early leaves over usual at the low and at the high end, dollars, and the swing between them, widest first
 * @throws RangeError if the ends of an input are out of order
 * @source noble-early-weaning-1998, projected budget
 * @example earlyWeaningSwings({ aheadDays: 100, movePercent: 10, earlyWeightLb: 300, earlyPriceUsdPerCwt: 300, usualWeightLb: 500, usualPriceUsdPerCwt: 200, weaningCostUsd: 0, interestPercent: 0, forageUsdPerTon: 100, fed: undefined, sparedLb: { low: 1000, likely: 1000, high: 1000 } }).find(({ input }) => input === 'market').swing //=> 200.0
 */
export function earlyWeaningSwings(calf: EarlyCalf) {
  const { aheadDays, movePercent, earlyWeightLb, usualPriceUsdPerCwt, interestPercent, fed, sparedLb } = calf;
  const around = (likely: number) => ({ low: likely * (1 - tenth), likely, high: likely * (1 + tenth) });
  type Value = (input: Moved) => number;
  const saleOf = (value: Value): number =>
    fed
      ? ((fed.weightLb * fed.priceUsdPerCwt) / 100) * (1 + value('market') / 100) - value('feed') * aheadDays
      : ((earlyWeightLb * value('quote')) / 100) * (1 + (interestPercent * aheadDays) / 36_500);
  const early = (value: Value): number => saleOf(value) - value('weaning-cost') + (value('guides') * value('forage')) / 2000;
  const usual = (value: Value): number => ((value('usual-weight') * usualPriceUsdPerCwt) / 100) * (1 + value('market') / 100);
  return oneAtATimeSwings<Moved>(
    (value) => early(value) - usual(value),
    [
      { input: 'market', low: -movePercent, likely: 0, high: movePercent },
      { input: 'usual-weight', ...around(calf.usualWeightLb) },
      { input: 'guides', low: Math.min(sparedLb.low, sparedLb.likely), likely: sparedLb.likely, high: Math.max(sparedLb.high, sparedLb.likely) },
      { input: 'forage', ...around(calf.forageUsdPerTon) },
      { input: 'weaning-cost', ...around(calf.weaningCostUsd) },
      fed ? { input: 'feed', ...around(fed.usdPerDay) } : { input: 'quote', ...around(calf.earlyPriceUsdPerCwt) },
    ],
  );
}
