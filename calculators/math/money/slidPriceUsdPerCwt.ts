import { need } from '../need.ts';

/**
 * Price after a slide for weight: p = p₀ + (W₀ − W) s / 100, with p₀ = `basePriceUsdPerCwt` at W₀ = `baseWeightLb`, W = `weightLb`,
 * s = `slideUsdPerCwt`, the dollars per hundred lb that the price falls for each 100 lb more.
 * @param options.basePriceUsdPerCwt - Price at the base weight, dollars per hundred lb; 0 or more
 * @param options.baseWeightLb - Weight that the price is for, lb; above 0
 * @param options.weightLb - Weight that is paid for, lb; above 0
 * @param options.slideUsdPerCwt - Fall of the price for each 100 lb more, dollars per hundred lb; any sign
 * @returns Price paid, dollars per hundred lb
 * @throws RangeError if a value is outside its range, or the slide takes the price below 0
 * @source aces-price-slide, equation 1
 * @example slidPriceUsdPerCwt({ basePriceUsdPerCwt: 75, baseWeightLb: 735, weightLb: 686, slideUsdPerCwt: 5 }) //=> 77.45
 */
export function slidPriceUsdPerCwt({
  basePriceUsdPerCwt,
  baseWeightLb,
  weightLb,
  slideUsdPerCwt,
}: {
  readonly basePriceUsdPerCwt: number;
  readonly baseWeightLb: number;
  readonly weightLb: number;
  readonly slideUsdPerCwt: number;
}): number {
  need('slidPriceUsdPerCwt', 'basePriceUsdPerCwt', basePriceUsdPerCwt, { atLeast: 0 });
  need('slidPriceUsdPerCwt', 'baseWeightLb', baseWeightLb, { above: 0 });
  need('slidPriceUsdPerCwt', 'weightLb', weightLb, { above: 0 });
  need('slidPriceUsdPerCwt', 'slideUsdPerCwt', slideUsdPerCwt);
  const priceUsdPerCwt = basePriceUsdPerCwt + ((baseWeightLb - weightLb) * slideUsdPerCwt) / 100;
  need('slidPriceUsdPerCwt', 'the price after the slide', priceUsdPerCwt, { atLeast: 0 });
  return priceUsdPerCwt;
}

/**
 * Slide that two quotes imply: s = 100 (p₁ − p₂) / (W₂ − W₁), with p₁, p₂ = `lightPriceUsdPerCwt`, `heavyPriceUsdPerCwt` at W₁, W₂ =
 * `lightWeightLb`, `heavyWeightLb`. Take both quotes on one day, or the season is mixed into the slide.
 * @param options.lightWeightLb - Weight of the lighter class, lb; above 0
 * @param options.lightPriceUsdPerCwt - Its price, dollars per hundred lb; 0 or more
 * @param options.heavyWeightLb - Weight of the heavier class, lb; above `lightWeightLb`
 * @param options.heavyPriceUsdPerCwt - Its price, dollars per hundred lb; 0 or more
 * @returns Fall of the price for each 100 lb more, dollars per hundred lb
 * @throws RangeError if a value is outside its range
 * @source aces-price-slide, equation 1 solved for the slide
 * @example slideUsdPerCwt({ lightWeightLb: 500, lightPriceUsdPerCwt: 140, heavyWeightLb: 600, heavyPriceUsdPerCwt: 126 }) //=> 14
 */
export function slideUsdPerCwt({
  lightWeightLb,
  lightPriceUsdPerCwt,
  heavyWeightLb,
  heavyPriceUsdPerCwt,
}: {
  readonly lightWeightLb: number;
  readonly lightPriceUsdPerCwt: number;
  readonly heavyWeightLb: number;
  readonly heavyPriceUsdPerCwt: number;
}): number {
  need('slideUsdPerCwt', 'lightWeightLb', lightWeightLb, { above: 0 });
  need('slideUsdPerCwt', 'lightPriceUsdPerCwt', lightPriceUsdPerCwt, { atLeast: 0 });
  need('slideUsdPerCwt', 'heavyWeightLb', heavyWeightLb, { above: lightWeightLb });
  need('slideUsdPerCwt', 'heavyPriceUsdPerCwt', heavyPriceUsdPerCwt, { atLeast: 0 });
  return (100 * (lightPriceUsdPerCwt - heavyPriceUsdPerCwt)) / (heavyWeightLb - lightWeightLb);
}
