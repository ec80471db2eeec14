import { need } from '../need.ts';

/**
 * Dry matter that a group eats in a day: n W p / 100, with n = `head`, W = `weightLb`, p = `intakePercent`.
 * @param options.head - Animals, number; at least 0
 * @param options.weightLb - Weight of one, lb; above 0
 * @param options.intakePercent - Dry matter eaten in a day, percent of weight; above 0, at most 8
 * @returns Dry matter eaten, lb per day
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example dailyIntakeLb({ head: 1, weightLb: 1200, intakePercent: 2 }) //=> 24
 */
export function dailyIntakeLb({
  head,
  weightLb,
  intakePercent,
}: {
  readonly head: number;
  readonly weightLb: number;
  readonly intakePercent: number;
}): number {
  need('dailyIntakeLb', 'head', head, { atLeast: 0 });
  need('dailyIntakeLb', 'weightLb', weightLb, { above: 0 });
  need('dailyIntakeLb', 'intakePercent', intakePercent, { above: 0, atMost: 8 });
  return (head * weightLb * intakePercent) / 100;
}
