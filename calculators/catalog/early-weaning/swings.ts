import { oneAtATimeSwings } from '../../math/money/oneAtATimeSwings.ts';
import type { Values } from './inputs.ts';

interface Known {
  readonly lowSavedLb: number;
  readonly savedLb: number;
  readonly highSavedLb: number;
  readonly fedWeightLb: number;
  readonly fedPriceUsdPerCwt: number;
  readonly calfUsdPerDay: number;
  readonly usualUsd: number;
  /** Weaned early, the way that was chosen: sold or fed. */
  readonly earlyUsd: number;
}
/** How far the numbers that no quote or guide gives a range for are moved. */
const tenth = 0.1;
const plotPoints = 9;
/** Where no move of the market makes both ways even: the left end of every plot, so that none is marked. */
export const noEvenPercent = -100;

/** What weaning early leaves over the usual time for one calf, and how far each number moves that by itself. */
export function swingsOf(values: Values, known: Known) {
  const { calfGoes, movePercent, earlyWeightLb, earlyPriceUsdPerCwt, usualWeightLb, usualPriceUsdPerCwt, weaningCostUsd } = values;
  const { aheadDays, interestPercent, forageUsdPerTon } = values;
  const isFed = calfGoes !== 'sold';
  const around = (likely: number) => ({ low: likely * (1 - tenth), likely, high: likely * (1 + tenth) });
  const early = (value: (input: Moved) => number): number =>
    (isFed
      ? ((known.fedWeightLb * known.fedPriceUsdPerCwt) / 100) * (1 + value('market') / 100) - value('feed') * aheadDays
      : ((earlyWeightLb * value('quote')) / 100) * (1 + (interestPercent * aheadDays) / 36_500)) -
    value('weaning-cost') +
    (value('guides') * value('forage')) / 2000;
  const usual = (value: (input: Moved) => number): number => ((value('usual-weight') * usualPriceUsdPerCwt) / 100) * (1 + value('market') / 100);
  type Moved = 'market' | 'quote' | 'usual-weight' | 'guides' | 'forage' | 'weaning-cost' | 'feed';
  return oneAtATimeSwings<Moved>(
    (value) => early(value) - usual(value),
    [
      { input: 'market', low: -movePercent, likely: 0, high: movePercent },
      { input: 'usual-weight', ...around(usualWeightLb) },
      { input: 'guides', low: Math.min(known.lowSavedLb, known.savedLb), likely: known.savedLb, high: Math.max(known.highSavedLb, known.savedLb) },
      { input: 'forage', ...around(forageUsdPerTon) },
      { input: 'weaning-cost', ...around(weaningCostUsd) },
      isFed ? { input: 'feed', ...around(known.calfUsdPerDay) } : { input: 'quote', ...around(earlyPriceUsdPerCwt) },
    ],
  ).map(({ input, atLow, atHigh, swing }) => ({ input, lowEndUsd: atLow, highEndUsd: atHigh, swingUsd: swing }));
}

/** Both ways as the market moves between now and the usual day, and the move that makes them even. */
export function byMarketOf({ calfGoes, movePercent }: Values, { usualUsd, earlyUsd, fedWeightLb, fedPriceUsdPerCwt }: Known) {
  const grossUsd = calfGoes === 'sold' ? 0 : (fedWeightLb * fedPriceUsdPerCwt) / 100;
  const fixedUsd = earlyUsd - grossUsd;
  const even = usualUsd === grossUsd ? noEvenPercent : 100 * (fixedUsd / (usualUsd - grossUsd) - 1);
  const isEven: 'yes' | 'no' = even > noEvenPercent && even <= 1000 ? 'yes' : 'no';
  // Wide enough to show where the two meet, if that is anywhere near.
  const reach = isEven === 'yes' && Math.abs(even) <= 75 ? 1.2 * Math.abs(even) : 0;
  const span = Math.min(90, Math.max(20, 2 * movePercent, reach));
  return {
    grossUsd,
    isEven,
    evenMarketPercent: isEven === 'yes' ? even : noEvenPercent,
    byMarket: Array.from({ length: plotPoints }, (_, at) => {
      const marketPercent = -span + (2 * span * at) / (plotPoints - 1);
      return { marketPercent, usualAtUsd: usualUsd * (1 + marketPercent / 100), earlyAtUsd: grossUsd * (1 + marketPercent / 100) + fixedUsd };
    }),
  };
}
