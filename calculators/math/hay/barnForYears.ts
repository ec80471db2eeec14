import { need, needThere } from '../need.ts';

/**
 * Years in which a barn that is full every fall was not enough: a plain count of needs above it.
 * @param needTons - Hay needed out of the barn in each hay year, tons
 * @param barnTons - Hay in the barn each fall, tons; at least 0
 * @returns Number of years
 * @throws RangeError if `barnTons` is negative
 * @source our own, a count
 * @example yearsShort([100, 120, 150], 120) //=> 1
 */
export function yearsShort(needTons: readonly number[], barnTons: number): number {
  need('yearsShort', 'barnTons', barnTons, { atLeast: 0 });
  return needTons.filter((needed) => needed > barnTons).length;
}

/**
 * Least hay in the barn each fall, full again every year, with which the years seen would have run short in at most so many: the need that just so many
 * years exceed.
 * @param needTons - Hay needed out of the barn in each hay year, tons; at least one year
 * @param mostYearsShort - Years that may run short; a whole number, at least 0
 * @returns Hay in the barn, tons; 0 where all years may run short
 * @throws RangeError if there is no year or the count is not a whole number from 0 up
 * @source our own, a count
 * @example barnForYears([100, 150, 120, 90], 1) //=> 120
 */
export function barnForYears(needTons: readonly number[], mostYearsShort: number): number {
  need('barnForYears', 'needTons.length', needTons.length, { atLeast: 1 });
  need('barnForYears', 'mostYearsShort', mostYearsShort, { atLeast: 0, whole: true });
  if (mostYearsShort >= needTons.length) return 0;
  return needThere('barnForYears', 'need', [...needTons].sort((one, other) => other - one)[mostYearsShort]);
}
