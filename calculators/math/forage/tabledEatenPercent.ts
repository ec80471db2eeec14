import { grazedShareByDays } from '../../tables/harvestShare.ts';

/**
 * Share eaten of what stands above the stubble, by the days that stock stay; the table ends at a week, and a longer stay is read there.
 * @param days - Days in one paddock or strip; less than a day is read as one
 * @returns Share eaten, percent of what stands above the stubble
 * @source penn-state-agronomy-guide, table 1.8-9
 * @example tabledEatenPercent(7) //=> 60
 */
export function tabledEatenPercent(days: number): number {
  return grazedShareByDays.findLast((row) => row.days <= days)?.percent ?? grazedShareByDays[0].percent;
}
