import { need } from '../need.ts';

/**
 * Later price at which holding cattle has paid: p = 100 (V + C) / (1 − d / 100) / W, with V = `valueNowUsd`, C = `costsUsd`,
 * d = `deathLossPercent`, W = `saleWeightLb`. The dead are paid for by the living, so the loss divides.
 * @param options.valueNowUsd - Value of one animal today, or its price, dollars; 0 or more
 * @param options.costsUsd - Feed, care, interest and hauling until the sale, dollars a head; 0 or more
 * @param options.deathLossPercent - Animals lost before the sale, percent; 0 or more, below 100. 0 if it is among the costs
 * @param options.saleWeightLb - Weight at the sale, shrunk, lb; above 0
 * @returns Price that brings the money back, dollars per hundred lb
 * @throws RangeError if a value is outside its range
 * @source harp-stocker-slides, break even
 * @example breakEvenSalePriceUsdPerCwt({ valueNowUsd: 378, costsUsd: 126.5, deathLossPercent: 0, saleWeightLb: 647 }) //=> 77.98
 */
export function breakEvenSalePriceUsdPerCwt({
  valueNowUsd,
  costsUsd,
  deathLossPercent,
  saleWeightLb,
}: {
  readonly valueNowUsd: number;
  readonly costsUsd: number;
  readonly deathLossPercent: number;
  readonly saleWeightLb: number;
}): number {
  need('breakEvenSalePriceUsdPerCwt', 'valueNowUsd', valueNowUsd, { atLeast: 0 });
  need('breakEvenSalePriceUsdPerCwt', 'costsUsd', costsUsd, { atLeast: 0 });
  need('breakEvenSalePriceUsdPerCwt', 'deathLossPercent', deathLossPercent, { atLeast: 0, below: 100 });
  need('breakEvenSalePriceUsdPerCwt', 'saleWeightLb', saleWeightLb, { above: 0 });
  return (100 * (valueNowUsd + costsUsd)) / (1 - deathLossPercent / 100) / saleWeightLb;
}
