import { need } from '../need.ts';

const poundsPerTon = 2000;

/**
 * Forage at each grazing where nobody has clipped, from the hay that the ground makes: F = 2,000 Y / n, with Y = `hayTonsPerAc`, n = `grazings`.
 * The worksheet spreads the year over five.
 * @param options.hayTonsPerAc - Yield of hay in a usual year, tons per acre; at least 0
 * @param options.grazings - Grazings in a season, number; at least 1
 * @returns Forage available at a grazing, lb per acre
 * @throws RangeError if a value is outside its range
 * @source cornell-grazing-worksheet, step 2
 * @example availableFromHayYield({ hayTonsPerAc: 3, grazings: 5 }) //=> 1200
 */
export function availableFromHayYield({ hayTonsPerAc, grazings }: { readonly hayTonsPerAc: number; readonly grazings: number }): number {
  need('availableFromHayYield', 'hayTonsPerAc', hayTonsPerAc, { atLeast: 0 });
  need('availableFromHayYield', 'grazings', grazings, { atLeast: 1 });
  return (poundsPerTon * hayTonsPerAc) / grazings;
}
