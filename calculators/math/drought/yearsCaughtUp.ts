import { need } from '../need.ts';

/**
 * Counts the years in which the rest of the season made good what is missing: those with at least the shortfall above normal still to come, with
 * `shortfallIn`, `normalRestIn`, `restOfSeasonIn`. Give the counts («in 6 of 30 years»), and pair the rain with a look at the grass.
 * @param options.shortfallIn - Rain missing to date against normal, inches; at least 0
 * @param options.normalRestIn - Normal rain from now to the end of the season, inches; at least 0
 * @param options.restOfSeasonIn - Rain from this date to the end of the season in each year of the record, inches; one year or more
 * @returns Years in the record, and years that would have caught up
 * @throws RangeError if the record is empty or a value is outside its range
 * @source our own, plain counting
 * @example yearsCaughtUp({ shortfallIn: 2, normalRestIn: 6, restOfSeasonIn: [4, 8, 9] }) //=> ({ years: 3, caughtUp: 2 })
 */
export function yearsCaughtUp({
  shortfallIn,
  normalRestIn,
  restOfSeasonIn,
}: {
  readonly shortfallIn: number;
  readonly normalRestIn: number;
  readonly restOfSeasonIn: readonly number[];
}): { readonly years: number; readonly caughtUp: number } {
  need('yearsCaughtUp', 'shortfallIn', shortfallIn, { atLeast: 0 });
  need('yearsCaughtUp', 'normalRestIn', normalRestIn, { atLeast: 0 });
  need('yearsCaughtUp', 'restOfSeasonIn.length', restOfSeasonIn.length, { atLeast: 1 });
  for (const each of restOfSeasonIn) need('yearsCaughtUp', 'restOfSeasonIn', each, { atLeast: 0 });
  return { years: restOfSeasonIn.length, caughtUp: restOfSeasonIn.filter((each) => each >= normalRestIn + shortfallIn).length };
}
