import { need } from '../need.ts';

/**
 * What a ton of sown feed costs by the time it is eaten: c / (y e), with c = `costPerAc`, y = `yieldTonsPerAc`, e = `eatenShare`. Compare it with
 * `costPerTonEaten` of hay, which is per ton of dry matter eaten too.
 * @param options.costPerAc - Seed, drilling, fertilizer, spray, water and rent, dollars per acre; at least 0
 * @param options.yieldTonsPerAc - Yield, tons of dry matter per acre; above 0
 * @param options.eatenShare - Share of the yield that animals eat, no unit; above 0, at most 1
 * @returns Cost, dollars per ton of dry matter eaten
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example sownFeedCostPerTon({ costPerAc: 150, yieldTonsPerAc: 3, eatenShare: 0.5 }) //=> 100
 */
export function sownFeedCostPerTon({
  costPerAc,
  yieldTonsPerAc,
  eatenShare,
}: {
  readonly costPerAc: number;
  readonly yieldTonsPerAc: number;
  readonly eatenShare: number;
}): number {
  need('sownFeedCostPerTon', 'costPerAc', costPerAc, { atLeast: 0 });
  need('sownFeedCostPerTon', 'yieldTonsPerAc', yieldTonsPerAc, { above: 0 });
  need('sownFeedCostPerTon', 'eatenShare', eatenShare, { above: 0, atMost: 1 });
  return costPerAc / (yieldTonsPerAc * eatenShare);
}
