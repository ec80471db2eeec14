import { need } from '../need.ts';
import { keptShare } from './keptShare.ts';

/**
 * What a ton of dry matter costs by the time it is eaten: c = p / ((1 - m)(1 - s)(1 - f)), with p = `pricePerTon`, m, s, f = `moisturePercent`,
 * `storageLossPercent`, `feedingLossPercent` over 100. With no moisture it is the cost of a ton as fed.
 * @param options.pricePerTon - Price delivered, dollars per ton as fed; at least 0
 * @param options.moisturePercent - Water in the hay, percent; at least 0, below 100
 * @param options.storageLossPercent - Dry matter lost in storage, percent; at least 0, below 100
 * @param options.feedingLossPercent - Dry matter wasted at feeding, percent; at least 0, below 100
 * @returns Cost, dollars per ton of dry matter eaten
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example costPerTonEaten({ pricePerTon: 80, moisturePercent: 0, storageLossPercent: 20, feedingLossPercent: 0 }) //=> 100
 */
export function costPerTonEaten({
  pricePerTon,
  moisturePercent,
  storageLossPercent,
  feedingLossPercent,
}: {
  readonly pricePerTon: number;
  readonly moisturePercent: number;
  readonly storageLossPercent: number;
  readonly feedingLossPercent: number;
}): number {
  need('costPerTonEaten', 'pricePerTon', pricePerTon, { atLeast: 0 });
  need('costPerTonEaten', 'moisturePercent', moisturePercent, { atLeast: 0, below: 100 });
  return pricePerTon / (1 - moisturePercent / 100) / keptShare([storageLossPercent, feedingLossPercent]);
}
