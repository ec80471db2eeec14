import { need } from '../need.ts';

/** A height that was read on a day. */
export interface HeightOnDay {
  readonly day: number;
  readonly heightIn: number;
}

/**
 * Day on which a resting paddock stands tall enough again, from two readings of its height: D = d2 + (H - h2) (d2 - d1) / (h2 - h1), with d1, h1 =
 * `first`, d2, h2 = `last`, H = `startHeightIn`; rounded up to a whole day. It takes growth to go on as it went.
 * @param options.first - The earlier reading: day of any calendar, whole, and height, inches; height at least 0
 * @param options.last - The later one; its day after the first, its height at least 0
 * @param options.startHeightIn - Height when grazing starts, inches; above 0
 * @returns The day of the last reading where it is tall enough already; undefined where it did not grow: not before it rains
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example readyDay({ first: { day: 100, heightIn: 4 }, last: { day: 110, heightIn: 6 }, startHeightIn: 8 }) //=> 120
 */
export function readyDay({
  first,
  last,
  startHeightIn,
}: {
  readonly first: HeightOnDay;
  readonly last: HeightOnDay;
  readonly startHeightIn: number;
}): number | undefined {
  need('readyDay', 'first.day', first.day, { whole: true });
  need('readyDay', 'first.heightIn', first.heightIn, { atLeast: 0 });
  need('readyDay', 'last.day', last.day, { above: first.day, whole: true });
  need('readyDay', 'last.heightIn', last.heightIn, { atLeast: 0 });
  need('readyDay', 'startHeightIn', startHeightIn, { above: 0 });
  if (last.heightIn >= startHeightIn) return last.day;
  const grownIn = last.heightIn - first.heightIn;
  if (grownIn <= 0) return undefined;
  // A hair above a whole day, from the division, is that day.
  return last.day + Math.ceil(((startHeightIn - last.heightIn) * (last.day - first.day)) / grownIn - 1e-9);
}
