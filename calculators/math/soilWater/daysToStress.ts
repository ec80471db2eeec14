import { need } from '../need.ts';

/** What every answer about days without rain starts from, inches. */
interface StoredWater {
  readonly totalAvailableIn: number;
  readonly depletedIn: number;
  readonly depletionFraction: number;
  readonly useInPerDay: number;
}

function needStoredWater(name: string, { totalAvailableIn, depletedIn, depletionFraction, useInPerDay }: StoredWater): void {
  need(name, 'totalAvailableIn', totalAvailableIn, { above: 0 });
  need(name, 'depletedIn', depletedIn, { atLeast: 0, atMost: totalAvailableIn });
  need(name, 'depletionFraction', depletionFraction, { above: 0, below: 1 });
  need(name, 'useInPerDay', useInPerDay, { above: 0 });
}

/**
 * Days without rain until plants slow down: t = (p TAW − D) / ET, 0 at least, with TAW = `totalAvailableIn`, D = `depletedIn`, p =
 * `depletionFraction`, ET = `useInPerDay`.
 * @param options.totalAvailableIn - Water that the root zone holds when full, inches; above 0
 * @param options.depletedIn - Water already gone from it, inches; 0 to `totalAvailableIn`
 * @param options.depletionFraction - Share taken before stress; above 0, below 1
 * @param options.useInPerDay - Use of well-supplied plants, inches per day; above 0
 * @returns Days until stress
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 83, solved for time
 * @example daysToStress({ totalAvailableIn: 6, depletedIn: 1, depletionFraction: 0.6, useInPerDay: 0.2 }) //=> 13.0
 */
export function daysToStress({ totalAvailableIn, depletedIn, depletionFraction, useInPerDay }: StoredWater): number {
  needStoredWater('daysToStress', { totalAvailableIn, depletedIn, depletionFraction, useInPerDay });
  return Math.max(0, (depletionFraction * totalAvailableIn - depletedIn) / useInPerDay);
}

/**
 * Days without rain until plants use only a share k of what they would: the days to stress, then (1 − p) (TAW / ET) ln(K / k), K being Ks at that
 * point (1, or less if stress has begun), with TAW = `totalAvailableIn`, D = `depletedIn`, p = `depletionFraction`, ET = `useInPerDay`, k =
 * `useShare`. Use slows as the soil dries, so the last drop is never reached and «days until wilting» has no answer.
 * @param options.totalAvailableIn - Water that the root zone holds when full, inches; above 0
 * @param options.depletedIn - Water already gone from it, inches; 0 to `totalAvailableIn`
 * @param options.depletionFraction - Share taken before stress; above 0, below 1
 * @param options.useInPerDay - Use of well-supplied plants, inches per day; above 0
 * @param options.useShare - Share of full use; above 0, at most 1; a quarter if left out
 * @returns Days until use has fallen to that share; 0 if it has
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 81 and 84, solved for time
 * @example daysToUseShare({ totalAvailableIn: 6, depletedIn: 1, depletionFraction: 0.6, useInPerDay: 0.2 }) //=> 29.6
 */
export function daysToUseShare({
  totalAvailableIn,
  depletedIn,
  depletionFraction,
  useInPerDay,
  useShare = 0.25,
}: StoredWater & { readonly useShare?: number }): number {
  need('daysToUseShare', 'useShare', useShare, { above: 0, atMost: 1 });
  const untilStress = daysToStress({ totalAvailableIn, depletedIn, depletionFraction, useInPerDay });
  const slowing = (1 - depletionFraction) * totalAvailableIn;
  const share = Math.min(1, (totalAvailableIn - depletedIn) / slowing);
  return share < 1 && share <= useShare ? 0 : untilStress + (slowing / useInPerDay) * Math.log(share / useShare);
}
