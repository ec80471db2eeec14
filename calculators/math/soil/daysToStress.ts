import { need } from '../need.ts';

interface RootZoneUse {
  /** TAW. */
  readonly totalAvailableIn: number;
  /** D₀. */
  readonly missingIn: number;
  /** p. */
  readonly easyShare: number;
  /** ET. */
  readonly useInPerDay: number;
}

function needUse(name: string, { totalAvailableIn, missingIn, easyShare, useInPerDay }: RootZoneUse): void {
  need(name, 'totalAvailableIn', totalAvailableIn, { above: 0 });
  need(name, 'missingIn', missingIn, { atLeast: 0, atMost: totalAvailableIn });
  need(name, 'easyShare', easyShare, { above: 0, below: 1 });
  need(name, 'useInPerDay', useInPerDay, { above: 0 });
}

/**
 * Days without rain until plants begin to go short: t = (p TAW − D₀)/ET, with TAW = `totalAvailableIn`, D₀ = `missingIn`, p = `easyShare`,
 * ET = `useInPerDay`; 0 if they are short already.
 * @param options.totalAvailableIn - Available water of the root zone when full, inches; above 0
 * @param options.missingIn - What is missing from it today, inches; 0 to `totalAvailableIn`
 * @param options.easyShare - Share of it that plants take without slowing down; above 0, below 1; about 0.6 for pasture
 * @param options.useInPerDay - Use by plants that are not short, inches a day; above 0
 * @returns Days
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 83 to 85
 * @example daysToStress({ totalAvailableIn: 6, missingIn: 1.2, easyShare: 0.6, useInPerDay: 0.2 }) //=> 12
 */
export function daysToStress({ totalAvailableIn, missingIn, easyShare, useInPerDay }: RootZoneUse): number {
  needUse('daysToStress', { totalAvailableIn, missingIn, easyShare, useInPerDay });
  return Math.max(0, (easyShare * totalAvailableIn - missingIn) / useInPerDay);
}

/**
 * Days without rain until use, and growth with it, is down to a share k of what it would be with water enough. Once short, plants use K_s ET with
 * K_s = (TAW − D)/((1 − p) TAW), so that the root zone is never emptied: t = (p TAW − D₀)/ET + (1 − p)(TAW/ET) ln(1/k); if they are short today, K_s of
 * today takes the place of 1 and the first term falls away. k = `growthShare`, the other symbols as for `daysToStress`.
 * @param options.totalAvailableIn - Available water of the root zone when full, inches; above 0
 * @param options.missingIn - What is missing from it today, inches; 0 to `totalAvailableIn`
 * @param options.easyShare - Share of it that plants take without slowing down; above 0, below 1
 * @param options.useInPerDay - Use by plants that are not short, inches a day; above 0
 * @param options.growthShare - Share of full growth to wait for; above 0, at most 1
 * @returns Days; 0 if growth is at or below that share today
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 84 and 85, integrated over time
 * @example daysToGrowthShare({ totalAvailableIn: 6, missingIn: 1.2, easyShare: 0.6, useInPerDay: 0.2, growthShare: 0.25 }) //=> 28.6
 */
export function daysToGrowthShare({
  totalAvailableIn,
  missingIn,
  easyShare,
  useInPerDay,
  growthShare,
}: RootZoneUse & { readonly growthShare: number }): number {
  const use: RootZoneUse = { totalAvailableIn, missingIn, easyShare, useInPerDay };
  needUse('daysToGrowthShare', use);
  need('daysToGrowthShare', 'growthShare', growthShare, { above: 0, atMost: 1 });
  const slowDays = ((1 - easyShare) * totalAvailableIn) / useInPerDay;
  const shareToday = Math.min(1, (totalAvailableIn - missingIn) / ((1 - easyShare) * totalAvailableIn));
  return daysToStress(use) + slowDays * Math.max(0, Math.log(shareToday / growthShare));
}
