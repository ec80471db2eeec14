import { need } from '../need.ts';

/**
 * Days of feed that a dry season takes from a herd: L = D (1 − y / 100), with D = `normalFeedDays`, y = `relativeForagePercent`.
 * @param normalFeedDays - Days that the pasture feeds the herd in a normal year, days; 0 or more
 * @param relativeForagePercent - Forage this year, percent of normal; 0 to 100
 * @returns Days of feed short, days
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example feedDaysLost(180, 75) //=> 45
 */
export function feedDaysLost(normalFeedDays: number, relativeForagePercent: number): number {
  need('feedDaysLost', 'normalFeedDays', normalFeedDays, { atLeast: 0 });
  need('feedDaysLost', 'relativeForagePercent', relativeForagePercent, { atLeast: 0, atMost: 100 });
  return normalFeedDays * (1 - relativeForagePercent / 100);
}

/**
 * Days of feed that the animals kept gain when some leave by an early date and not a later one: G = n t / (N − n), with N = `herdHead`, n = `leaveHead`,
 * t = `daysEarlier`, heads weighed alike.
 * @param herdHead - Animals on the place, head; above `leaveHead`
 * @param leaveHead - Animals that leave, head; 0 or more
 * @param daysEarlier - How much sooner they leave, days; 0 or more
 * @returns Days of feed for those that stay, days
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example feedDaysGained(120, 20, 60) //=> 12
 */
export function feedDaysGained(herdHead: number, leaveHead: number, daysEarlier: number): number {
  need('feedDaysGained', 'leaveHead', leaveHead, { atLeast: 0 });
  need('feedDaysGained', 'herdHead', herdHead, { above: leaveHead });
  need('feedDaysGained', 'daysEarlier', daysEarlier, { atLeast: 0 });
  return (leaveHead * daysEarlier) / (herdHead - leaveHead);
}
