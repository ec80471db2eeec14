import { need } from '../need.ts';
import { sameDayLater, yearOfDay } from './periodMonths.ts';
import { type RainByDay, rainBetween } from './rainByDay.ts';

/** One past season: rain through each of the asked days, and through its last. */
export interface SplitSeason {
  readonly year: number;
  readonly through: readonly number[];
  readonly whole: number;
}
/** So much of a season must have been read for it to count. */
const leastReadShare = 0.95;

/**
 * Rain of each past season from a first day through each of some days and through a last day. A season counts where the record spans it and at least
 * 95 percent of its days were read; the one of the days given does not.
 * @param options.table - The record as `rainByDay` lays it out
 * @param options.fromDay - First day of this season, day number
 * @param options.toDay - Last day of this season, day number; at least `fromDay` and less than two years later
 * @param options.atDays - Days to split at, day numbers from `fromDay` to `toDay`
 * @returns One line a season, oldest first, in the unit of the record
 * @throws RangeError if the days are not in order
 * @source our own, plain adding up
 * @example splitSeasons({ table: { firstDay: 365, lastDay: 365, rainBefore: [0, 3], daysReadBefore: [0, 1] }, fromDay: 0, toDay: 0, atDays: [0] }) //=> [{ year: 1971, through: [3], whole: 3 }]
 */
export function splitSeasons({
  table,
  fromDay,
  toDay,
  atDays,
}: {
  readonly table: RainByDay;
  readonly fromDay: number;
  readonly toDay: number;
  readonly atDays: readonly number[];
}): readonly SplitSeason[] {
  need('splitSeasons', 'fromDay', fromDay, { whole: true });
  need('splitSeasons', 'toDay', toDay, { atLeast: fromDay, atMost: fromDay + 731, whole: true });
  for (const day of atDays) need('splitSeasons', 'atDays', day, { atLeast: fromDay, atMost: toDay, whole: true });
  const seasons: SplitSeason[] = [];
  for (let year = yearOfDay(table.firstDay); year <= yearOfDay(table.lastDay); year += 1) {
    const later = year - yearOfDay(toDay);
    const [start, end] = [sameDayLater(fromDay, later), sameDayLater(toDay, later)];
    if (later === 0 || start < table.firstDay || end > table.lastDay) continue;
    const whole = rainBetween(table, start, end);
    if (whole.daysRead < leastReadShare * (end - start + 1)) continue;
    const through = atDays.map((day) => rainBetween(table, start, Math.max(start, sameDayLater(day, later))).rain);
    seasons.push({ year, through, whole: whole.rain });
  }
  return seasons;
}
