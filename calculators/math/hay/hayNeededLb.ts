import { need } from '../need.ts';
import { keptShare } from './keptShare.ts';

/**
 * Hay to put up or to buy, as fed, so that the herd eats a dry matter: H = E / ((1 - m)(1 - s)(1 - f)), with E = `dryMatterEatenLb`, m, s, f =
 * `moisturePercent`, `storageLossPercent`, `feedingLossPercent` over 100. Losses divide: multiplying by (1 + loss) buys too little.
 * @param options.dryMatterEatenLb - Dry matter that must be eaten, lb; at least 0
 * @param options.moisturePercent - Water in the hay as weighed, percent; at least 0, below 100
 * @param options.storageLossPercent - Dry matter lost between weighing and feeding, percent; at least 0, below 100
 * @param options.feedingLossPercent - Dry matter wasted of what is fed, percent; at least 0, below 100
 * @returns Hay as fed, weighed before it is stored, lb
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example hayNeededLb({ dryMatterEatenLb: 24, moisturePercent: 8, storageLossPercent: 0, feedingLossPercent: 15 }) //=> 30.7
 */
export function hayNeededLb({
  dryMatterEatenLb,
  moisturePercent,
  storageLossPercent,
  feedingLossPercent,
}: {
  readonly dryMatterEatenLb: number;
  readonly moisturePercent: number;
  readonly storageLossPercent: number;
  readonly feedingLossPercent: number;
}): number {
  need('hayNeededLb', 'dryMatterEatenLb', dryMatterEatenLb, { atLeast: 0 });
  need('hayNeededLb', 'moisturePercent', moisturePercent, { atLeast: 0, below: 100 });
  need('hayNeededLb', 'storageLossPercent', storageLossPercent, { atLeast: 0, below: 100 });
  need('hayNeededLb', 'feedingLossPercent', feedingLossPercent, { atLeast: 0, below: 100 });
  return dryMatterEatenLb / (1 - moisturePercent / 100) / keptShare([storageLossPercent, feedingLossPercent]);
}
