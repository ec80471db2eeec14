import { need } from '../need.ts';
import { keptShare } from './keptShare.ts';

/**
 * Share of the hay as weighed that ends as dry matter in the animal: (1 - m)(1 - s)(1 - f) by division, (1 - m) / ((1 + s)(1 + f)) by the multiplication that some guides print,
 * with m, s, f = `moisturePercent`, `storageLossPercent`, `feedingLossPercent` over 100. Need over this share is the hay to have; multiplication has too little, and the more so the larger the losses.
 * @param options.moisturePercent - Water in the hay as weighed, percent; at least 0, below 100
 * @param options.storageLossPercent - Dry matter lost between weighing and feeding, percent; at least 0, below 100
 * @param options.feedingLossPercent - Dry matter wasted of what is fed, percent; at least 0, below 100
 * @param options.convention - Convention: divide or multiply
 * @returns Share, no unit, above 0 and at most 1
 * @throws RangeError if a value is outside its range
 * @source wv-farm-bureau-2014, p. 15
 * @example eatenShare({ moisturePercent: 15, storageLossPercent: 10, feedingLossPercent: 20, convention: 'divide' }) //=> 0.612
 */
export function eatenShare({
  moisturePercent,
  storageLossPercent,
  feedingLossPercent,
  convention,
}: {
  readonly moisturePercent: number;
  readonly storageLossPercent: number;
  readonly feedingLossPercent: number;
  readonly convention: 'divide' | 'multiply';
}): number {
  if (convention === 'divide') return keptShare([moisturePercent, storageLossPercent, feedingLossPercent]);
  need('eatenShare', 'moisturePercent', moisturePercent, { atLeast: 0, below: 100 });
  need('eatenShare', 'storageLossPercent', storageLossPercent, { atLeast: 0, below: 100 });
  need('eatenShare', 'feedingLossPercent', feedingLossPercent, { atLeast: 0, below: 100 });
  return (1 - moisturePercent / 100) / ((1 + storageLossPercent / 100) * (1 + feedingLossPercent / 100));
}
