import { need } from '../need.ts';

/** A reading: the amount of one day, or of several days that end with `day`. */
export interface Reading {
  readonly day: number;
  readonly amount: number;
  readonly days?: number;
}
/** One past season: rain through each of the asked days, and through its last. */
export interface SplitSeason {
  readonly year: number;
  readonly through: readonly number[];
  readonly whole: number;
}
const dayMs = 86_400_000;
/** So much of a season must have been read for it to count. */
const leastReadShare = 0.95;

/** The same day of the month in another year; 29 February becomes the 28th. */
function inOtherYear(day: number, yearsLater: number): number {
  const date = new Date(day * dayMs);
  const [month, dayOfMonth] = [date.getUTCMonth(), date.getUTCDate()];
  return Date.UTC(date.getUTCFullYear() + yearsLater, month, month === 1 ? Math.min(28, dayOfMonth) : dayOfMonth) / dayMs;
}
const yearOf = (day: number): number => new Date(day * dayMs).getUTCFullYear();
/** Days of a reading that lie between two days, both counted. */
const daysWithin = ({ day, days = 1 }: Reading, first: number, last: number): number =>
  Math.max(0, Math.min(day, last) - Math.max(day - days + 1, first) + 1);

/**
 * Rain of each past season from a first day through each of some days and through a last day: the amounts of the readings in between, a total of several
 * days shared evenly among them. A season counts where at least 95 percent of its days were read; that of the days given does not.
 * @param options.readings - The record, any one unit; day numbers since 1970-01-01, days that were read and dry included
 * @param options.fromDay - First day of this season, day number
 * @param options.toDay - Last day of this season, day number; at least `fromDay` and less than two years later
 * @param options.atDays - Days to split at, day numbers from `fromDay` to `toDay`
 * @returns One line a season, oldest first, in the unit of the record
 * @throws RangeError if the days are not in order
 * @source our own, plain adding up
 * @example splitSeasons({ readings: [{ day: 365, amount: 3, days: 1 }], fromDay: 0, toDay: 0, atDays: [0] }) //=> [{ year: 1971, through: [3], whole: 3 }]
 */
export function splitSeasons({
  readings,
  fromDay,
  toDay,
  atDays,
}: {
  readonly readings: readonly Reading[];
  readonly fromDay: number;
  readonly toDay: number;
  readonly atDays: readonly number[];
}): readonly SplitSeason[] {
  need('splitSeasons', 'fromDay', fromDay, { whole: true });
  need('splitSeasons', 'toDay', toDay, { atLeast: fromDay, atMost: fromDay + 731, whole: true });
  for (const day of atDays) need('splitSeasons', 'atDays', day, { atLeast: fromDay, atMost: toDay, whole: true });
  if (readings.length === 0) return [];
  let [first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { day, days = 1 } of readings) {
    first = Math.min(first, day - days + 1);
    last = Math.max(last, day);
  }
  const thisYear = yearOf(toDay);
  const seasons: SplitSeason[] = [];
  for (let year = yearOf(first); year <= yearOf(last); year += 1) {
    const later = year - thisYear;
    const [start, end] = [inOtherYear(fromDay, later), inOtherYear(toDay, later)];
    if (later === 0 || start < first || end > last) continue;
    const within = readings.filter((reading) => daysWithin(reading, start, end) > 0);
    const readDays = within.reduce((sum, reading) => sum + daysWithin(reading, start, end), 0);
    if (readDays < leastReadShare * (end - start + 1)) continue;
    const rain = (through: number): number =>
      within.reduce((sum, reading) => sum + (reading.amount * daysWithin(reading, start, through)) / (reading.days ?? 1), 0);
    seasons.push({ year, through: atDays.map((day) => rain(inOtherYear(day, later))), whole: rain(end) });
  }
  return seasons;
}
