import { need } from '../need.ts';

/**
 * What a calf crop brings: n = C w / 100 calves and n W p / 100 dollars, with C = `cows`, w = `weaningPercent`, W = `weightLb`, p = `priceUsdPerCwt`.
 * @param options.cows - Cows, number; above 0
 * @param options.weaningPercent - Calves weaned per 100 cows, or lambs or kids per 100 ewes or does, percent; 0 to 250
 * @param options.weightLb - Weight of a calf when sold, lb; above 0
 * @param options.priceUsdPerCwt - Price at that weight, dollars per hundred lb; 0 or more
 * @returns Calves, number; income of the herd and income for each cow kept, dollars
 * @throws RangeError if a value is outside its range
 * @source gessner-2016, example herd
 * @example calfCropUsd({ cows: 200, weaningPercent: 85, weightLb: 500, priceUsdPerCwt: 140 }).incomeUsd //=> 119000
 */
export function calfCropUsd({
  cows,
  weaningPercent,
  weightLb,
  priceUsdPerCwt,
}: {
  readonly cows: number;
  readonly weaningPercent: number;
  readonly weightLb: number;
  readonly priceUsdPerCwt: number;
}): { readonly calves: number; readonly incomeUsd: number; readonly incomeUsdPerCow: number } {
  need('calfCropUsd', 'cows', cows, { above: 0 });
  need('calfCropUsd', 'weaningPercent', weaningPercent, { atLeast: 0, atMost: 250 });
  need('calfCropUsd', 'weightLb', weightLb, { above: 0 });
  need('calfCropUsd', 'priceUsdPerCwt', priceUsdPerCwt, { atLeast: 0 });
  const calves = (cows * weaningPercent) / 100;
  const incomeUsd = (calves * weightLb * priceUsdPerCwt) / 100;
  return { calves, incomeUsd, incomeUsdPerCow: incomeUsd / cows };
}
