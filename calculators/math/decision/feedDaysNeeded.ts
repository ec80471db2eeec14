import { need } from '../need.ts';

/**
 * Forage that the year makes at best when it was dry up to a date and the rest is normal: b = 100 - c (100 - y) / 100, with c = `grownPercent`,
 * y = `dryPercent`. What did not grow by then does not come back.
 * @param grownPercent - Share of the year's growth that is normally past, percent; at least 0, at most 100.001, since rounded months can add up to a little more
 * @param dryPercent - Forage of a season that stays so dry, percent of normal; 0 to 100
 * @returns Forage of the whole year, percent of normal
 * @throws RangeError if a value is outside its range
 * @source our own, the growth curve in two parts
 * @example bestForagePercent(60, 75) //=> 85
 */
export function bestForagePercent(grownPercent: number, dryPercent: number): number {
  need('bestForagePercent', 'grownPercent', grownPercent, { atLeast: 0, atMost: 100.001 });
  need('bestForagePercent', 'dryPercent', dryPercent, { atLeast: 0, atMost: 100 });
  return 100 - (grownPercent * (100 - dryPercent)) / 100;
}

/**
 * Growth that a caged spot shows by a date in a season at the trigger: G = Y c x / 10,000, with Y = `yearLbPerAc`, c = `grownPercent`,
 * x = `triggerPercent`.
 * @param yearLbPerAc - Growth of a normal year, lb of dry matter per acre; 0 or more
 * @param grownPercent - Share of the year's growth that is normally past, percent; 0 or more
 * @param triggerPercent - Share of normal that is called too little, percent; 0 or more
 * @returns Growth to date, lb per acre
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example cagedForageLbPerAc(2400, 60, 75) //=> 1080
 */
export function cagedForageLbPerAc(yearLbPerAc: number, grownPercent: number, triggerPercent: number): number {
  need('cagedForageLbPerAc', 'yearLbPerAc', yearLbPerAc, { atLeast: 0 });
  need('cagedForageLbPerAc', 'grownPercent', grownPercent, { atLeast: 0 });
  need('cagedForageLbPerAc', 'triggerPercent', triggerPercent, { atLeast: 0 });
  return (yearLbPerAc * grownPercent * triggerPercent) / 10_000;
}

/**
 * Days of feed that must stand on a date so that it lasts with what a dry rest of the season still grows: H = t - F r y / 10,000, with
 * t = `leftDays`, F = `normalFeedDays`, r = `comesPercent`, y = `dryPercent`; 0 where the growth to come is enough.
 * @param options.leftDays - Days until the grazing ends; 0 or more
 * @param options.normalFeedDays - Days that the pasture feeds the herd in a normal year, days; 0 or more
 * @param options.comesPercent - Share of the year's growth still to come before the end, percent; 0 or more
 * @param options.dryPercent - Forage of a season that stays so dry, percent of normal; 0 to 100
 * @returns Feed that must stand, days
 * @throws RangeError if a value is outside its range
 * @source our own, growth shared out over the days
 * @example feedDaysNeeded({ leftDays: 138, normalFeedDays: 185, comesPercent: 40, dryPercent: 75 }) //=> 82.5
 */
export function feedDaysNeeded({
  leftDays,
  normalFeedDays,
  comesPercent,
  dryPercent,
}: {
  readonly leftDays: number;
  readonly normalFeedDays: number;
  readonly comesPercent: number;
  readonly dryPercent: number;
}): number {
  need('feedDaysNeeded', 'leftDays', leftDays, { atLeast: 0 });
  need('feedDaysNeeded', 'normalFeedDays', normalFeedDays, { atLeast: 0 });
  need('feedDaysNeeded', 'comesPercent', comesPercent, { atLeast: 0 });
  need('feedDaysNeeded', 'dryPercent', dryPercent, { atLeast: 0, atMost: 100 });
  return Math.max(0, leftDays - (normalFeedDays * comesPercent * dryPercent) / 10_000);
}
