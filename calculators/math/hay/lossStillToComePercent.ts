import { need } from '../need.ts';

/**
 * Dry matter that hay loses from the day it was weighed to the day it is fed, percent of that weight: l = 100 (1 - (1 - L) / (1 - K)), with L = `lossAtFeedingPercent` / 100 and
 * K = `lossAtWeighingPercent` / 100, both counted from baling. Weighed at baling, K is 0; weighed lately, only the rest is still to come.
 * @param options.lossAtWeighingPercent - Loss by the day of weighing, percent of what was baled; at least 0, below 100
 * @param options.lossAtFeedingPercent - Loss by the day of feeding, percent of what was baled; at least `lossAtWeighingPercent`, below 100
 * @returns Loss still to come, percent of the weight found
 * @throws RangeError if a value is outside its range
 * @source our own, losses compound
 * @example lossStillToComePercent({ lossAtWeighingPercent: 10, lossAtFeedingPercent: 19 }) //=> 10
 */
export function lossStillToComePercent({
  lossAtWeighingPercent,
  lossAtFeedingPercent,
}: {
  readonly lossAtWeighingPercent: number;
  readonly lossAtFeedingPercent: number;
}): number {
  need('lossStillToComePercent', 'lossAtWeighingPercent', lossAtWeighingPercent, { atLeast: 0, below: 100 });
  need('lossStillToComePercent', 'lossAtFeedingPercent', lossAtFeedingPercent, { atLeast: lossAtWeighingPercent, below: 100 });
  return 100 * (1 - (1 - lossAtFeedingPercent / 100) / (1 - lossAtWeighingPercent / 100));
}
