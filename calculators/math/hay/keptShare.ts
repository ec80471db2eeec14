import { need } from '../need.ts';

/**
 * Share of the hay that is left after losses one upon another: the product of (1 - p / 100), with p each of `lossPercents`. Losses compound; they
 * are never added.
 * @param lossPercents - Losses in order, each in percent of what reached that step; each at least 0, below 100
 * @returns Share kept, no unit, above 0 and at most 1
 * @throws RangeError if a loss is outside its range
 * @source ball-extending-grazing, chain of losses
 * @example keptShare([35, 35, 30]) //=> 0.296
 */
export function keptShare(lossPercents: readonly number[]): number {
  return lossPercents.reduce((kept, lossPercent) => {
    need('keptShare', 'lossPercents', lossPercent, { atLeast: 0, below: 100 });
    return kept * (1 - lossPercent / 100);
  }, 1);
}
