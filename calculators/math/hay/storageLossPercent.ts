import { hayStorageLossByMonths, type StorageMethod } from '../../tables/hayStorageLoss.ts';
import { need } from '../need.ts';
import { interpolated } from '../special/interpolated.ts';

/** Months at which the two printed ranges are taken to hold: the end of the first, the middle of the second; nothing is lost on the first day. */
const knotMonths = [0, 9, 15] as const;

/**
 * Dry matter that hay loses in storage: a straight line from nothing at 0 months through the published range for 9 months to the one for 12 to 18
 * months, taken at 15 and held to 18.
 * @param options.method - How it is stored: ground-uncovered, raised-uncovered, ground-covered, raised-covered, roof, barn
 * @param options.months - Months in storage, months; 0 to 18 (see `meanMonthsStored`)
 * @returns Loss in percent of what went in: low (under 25 in of rain, good bales), mid, high (over 40 in)
 * @throws RangeError if `months` is outside its range
 * @source our own, interpolation between the ranges of huhnke-bae1716
 * @example storageLossPercent({ method: 'ground-uncovered', months: 9 }) //=> { low: 5, mid: 12.5, high: 20 }
 */
export function storageLossPercent({ method, months }: { readonly method: StorageMethod; readonly months: number }): {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
} {
  need('storageLossPercent', 'months', months, { atLeast: 0, atMost: 18 });
  const row = hayStorageLossByMonths.find((each) => each.method === method);
  if (row === undefined) throw new RangeError(`storageLossPercent needs method of the table, got ${method}`);
  const end = (index: 0 | 1): number => interpolated(months, knotMonths, [0, row.upTo9MonthsPercent[index], row.at12To18MonthsPercent[index]]);
  const low = end(0);
  const high = end(1);
  return { low, mid: (low + high) / 2, high };
}
