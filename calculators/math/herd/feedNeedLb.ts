import { need } from '../need.ts';
import { dailyIntakeLb } from './dailyIntakeLb.ts';

export interface FeedStage {
  readonly days: number;
  readonly head: number;
  readonly weightLb: number;
  readonly intakePercent: number;
}

/**
 * Dry matter that a herd eats over stages that differ in appetite: the sum of T n W p / 100. A calving date inside the feeding time makes two
 * stages of it.
 * @param stages - For each stage: days, at least 0; head; weight of one, lb; dry matter eaten in a day, percent of weight
 * @returns Dry matter eaten, lb
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example feedNeedLb([{ days: 60, head: 100, weightLb: 1200, intakePercent: 2 }, { days: 30, head: 100, weightLb: 1200, intakePercent: 2.5 }]) //=> 234000
 */
export function feedNeedLb(stages: readonly FeedStage[]): number {
  return stages.reduce((sum, { days, head, weightLb, intakePercent }) => {
    need('feedNeedLb', 'days', days, { atLeast: 0 });
    return sum + days * dailyIntakeLb({ head, weightLb, intakePercent });
  }, 0);
}
