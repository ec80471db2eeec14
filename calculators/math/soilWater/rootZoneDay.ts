import { need } from '../need.ts';
import { stressCoefficient } from './stressCoefficient.ts';

/**
 * When in the day rain counts. `start-of-day`: plants go by yesterday evening's soil, and water drains after the day's use (the general equations);
 * `after-rain`: rain comes first, what the soil cannot hold drains at once, then plants drink (the worked example with irrigation early in the day).
 */
export type DayOrder = 'start-of-day' | 'after-rain';

export interface RootZoneDay {
  /** Water missing at the end of the day, millimeters. */
  readonly depletionMm: number;
  readonly stress: number;
  /** Water that plants and soil really used, millimeters. */
  readonly useMm: number;
  /** Water that left below the roots, millimeters. */
  readonly drainageMm: number;
}

/**
 * One day of the root zone with one crop coefficient: Dr,i = Dr,i−1 − P + Ks ETc + DP, kept within 0 to TAW, with Dr,i−1 = `depletionMm`, P =
 * `rainMm`, ETc = `cropUseMm`, TAW = `totalAvailableMm`, p = `depletionFraction` (fit it to the day first). Nothing is lost: rain − use − drainage
 * is the change.
 * @param options.depletionMm - Water missing last evening, millimeters; 0 to `totalAvailableMm`
 * @param options.rainMm - Rain that went into the ground (after runoff and interception) and water given, millimeters; at least 0
 * @param options.cropUseMm - Water that plants would use if well supplied, millimeters; at least 0
 * @param options.totalAvailableMm - Total available water, millimeters; above 0
 * @param options.depletionFraction - Share taken before stress; above 0, below 1
 * @param options.dayOrder - `start-of-day` or `after-rain`
 * @returns Depletion at the end of the day, stress coefficient, use and drainage, millimeters
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 84 to 88; example 38 for the other order
 * @example rootZoneDay({ depletionMm: 55, rainMm: 0, cropUseMm: 6, totalAvailableMm: 160, depletionFraction: 0.4, dayOrder: 'start-of-day' }).depletionMm //=> 61.0
 */
export function rootZoneDay({
  depletionMm,
  rainMm,
  cropUseMm,
  totalAvailableMm,
  depletionFraction,
  dayOrder,
}: {
  readonly depletionMm: number;
  readonly rainMm: number;
  readonly cropUseMm: number;
  readonly totalAvailableMm: number;
  readonly depletionFraction: number;
  readonly dayOrder: DayOrder;
}): RootZoneDay {
  need('rootZoneDay', 'rainMm', rainMm, { atLeast: 0 });
  need('rootZoneDay', 'cropUseMm', cropUseMm, { atLeast: 0 });
  if (dayOrder === 'after-rain') {
    const wetted = Math.max(0, depletionMm - rainMm);
    const stress = stressCoefficient({ depletionMm: wetted, totalAvailableMm, depletionFraction });
    const useMm = Math.min(stress * cropUseMm, totalAvailableMm - wetted);
    return { depletionMm: wetted + useMm, stress, useMm, drainageMm: Math.max(0, rainMm - depletionMm) };
  }
  const stress = stressCoefficient({ depletionMm, totalAvailableMm, depletionFraction });
  const useMm = Math.min(stress * cropUseMm, totalAvailableMm - depletionMm + rainMm);
  const before = depletionMm - rainMm + useMm;
  return { depletionMm: Math.max(0, before), stress, useMm, drainageMm: Math.max(0, -before) };
}
