import { need } from '../need.ts';

/**
 * Months that hay stands on average when it is fed down evenly: b + f / 2, with b = `monthsBeforeFeeding`, f = `feedingMonths`. The last bale
 * stands the whole time, the first one only b.
 * @param options.monthsBeforeFeeding - Months from stacking to the first day of feeding, months; at least 0
 * @param options.feedingMonths - Months of feeding, months; at least 0
 * @returns Storage on average, months
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example meanMonthsStored({ monthsBeforeFeeding: 0, feedingMonths: 6 }) //=> 3
 */
export function meanMonthsStored({
  monthsBeforeFeeding,
  feedingMonths,
}: {
  readonly monthsBeforeFeeding: number;
  readonly feedingMonths: number;
}): number {
  need('meanMonthsStored', 'monthsBeforeFeeding', monthsBeforeFeeding, { atLeast: 0 });
  need('meanMonthsStored', 'feedingMonths', feedingMonths, { atLeast: 0 });
  return monthsBeforeFeeding + feedingMonths / 2;
}
