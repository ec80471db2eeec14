import { need } from '../need.ts';

/**
 * What each added pound is worth when heavier cattle bring less a pound: v = (W₂ p₂ − W₁ p₁) / 100 / (W₂ − W₁), with W₁, W₂ = `startWeightLb`,
 * `endWeightLb` and p₁, p₂ = `startPriceUsdPerCwt`, `endPriceUsdPerCwt`. It is less than the price a pound, and can be negative.
 * @param options.startWeightLb - Weight at the start, lb; above 0
 * @param options.startPriceUsdPerCwt - Price at that weight, dollars per hundred lb; 0 or more
 * @param options.endWeightLb - Weight at the end, lb; above `startWeightLb`
 * @param options.endPriceUsdPerCwt - Price at that weight, dollars per hundred lb; 0 or more
 * @returns Value at the start and at the end, the difference, dollars; and the difference over the pounds gained, dollars per lb
 * @throws RangeError if a value is outside its range
 * @source rasby-value-of-gain-2015, example
 * @example valueOfGainUsdPerLb({ startWeightLb: 500, startPriceUsdPerCwt: 140, endWeightLb: 600, endPriceUsdPerCwt: 126 }).gainUsdPerLb //=> 0.56
 */
export function valueOfGainUsdPerLb({
  startWeightLb,
  startPriceUsdPerCwt,
  endWeightLb,
  endPriceUsdPerCwt,
}: {
  readonly startWeightLb: number;
  readonly startPriceUsdPerCwt: number;
  readonly endWeightLb: number;
  readonly endPriceUsdPerCwt: number;
}): { readonly startUsd: number; readonly endUsd: number; readonly gainUsd: number; readonly gainUsdPerLb: number } {
  need('valueOfGainUsdPerLb', 'startWeightLb', startWeightLb, { above: 0 });
  need('valueOfGainUsdPerLb', 'startPriceUsdPerCwt', startPriceUsdPerCwt, { atLeast: 0 });
  need('valueOfGainUsdPerLb', 'endWeightLb', endWeightLb, { above: startWeightLb });
  need('valueOfGainUsdPerLb', 'endPriceUsdPerCwt', endPriceUsdPerCwt, { atLeast: 0 });
  const startUsd = (startWeightLb * startPriceUsdPerCwt) / 100;
  const endUsd = (endWeightLb * endPriceUsdPerCwt) / 100;
  const gainUsd = endUsd - startUsd;
  return { startUsd, endUsd, gainUsd, gainUsdPerLb: gainUsd / (endWeightLb - startWeightLb) };
}
