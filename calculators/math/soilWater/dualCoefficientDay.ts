import { need } from '../need.ts';
import { evaporationCoefficient, evaporationReduction } from './evaporationCoefficient.ts';
import type { DayOrder } from './rootZoneDay.ts';
import { stressCoefficient } from './stressCoefficient.ts';

/** What one day starts from: two depletions, the soil's limits, the plants, the weather. */
export interface DualCoefficientInputs {
  readonly surfaceDepletionMm: number;
  readonly depletionMm: number;
  readonly rainMm: number;
  readonly referenceMm: number;
  readonly basalCoefficient: number;
  readonly maximumCoefficient: number;
  readonly exposedShare: number;
  readonly wettedShare?: number;
  readonly readilyEvaporableMm: number;
  readonly evaporableMm: number;
  readonly totalAvailableMm: number;
  readonly depletionFraction: number;
  readonly dayOrder: DayOrder;
}

export interface DualCoefficientDay {
  readonly surfaceDepletionMm: number;
  readonly depletionMm: number;
  /** Water that evaporated from the ground, millimeters. */
  readonly evaporationMm: number;
  /** Water that plants used, millimeters. */
  readonly transpirationMm: number;
  readonly drainageMm: number;
  readonly stress: number;
  readonly evaporationReduction: number;
}

/**
 * One day of the root zone with plants and bare ground kept apart: use = (Ks Kcb + Ke) ETo. The surface layer, part of the root zone, holds its own
 * account of depth De over the exposed ground: De,i = De,i−1 − P / fw + Ke ETo / few + DPe, and the whole Dr,i = Dr,i−1 − P + use + DP, both kept
 * within their limits, with De,i−1 = `surfaceDepletionMm`, Dr,i−1 = `depletionMm`, P = `rainMm`, ETo = `referenceMm`, Kcb = `basalCoefficient`,
 * Kcmax = `maximumCoefficient`, few = `exposedShare`, fw = `wettedShare`, REW = `readilyEvaporableMm`, TEW = `evaporableMm`, TAW =
 * `totalAvailableMm`, p = `depletionFraction`. The surface always takes rain before it evaporates; `dayOrder` says whether plants and ground go by
 * the soil before the rain or after it.
 * @param options.surfaceDepletionMm - Water gone from the exposed surface layer last evening, millimeters; 0 to `evaporableMm`
 * @param options.depletionMm - Water missing from the root zone last evening, millimeters; 0 to `totalAvailableMm`
 * @param options.rainMm - Rain that went into the ground (after runoff and interception), mean over the field, millimeters; at least 0
 * @param options.referenceMm - Reference evapotranspiration, millimeters; at least 0
 * @param options.basalCoefficient - Basal crop coefficient, no unit; at least 0
 * @param options.maximumCoefficient - Upper limit of the crop coefficient, no unit; at least `basalCoefficient`
 * @param options.exposedShare - Share of the ground wetted and exposed; 0.01 to 1
 * @param options.wettedShare - Share of the ground that today's water wets; above 0, at most 1; 1 (rain) if left out
 * @param options.readilyEvaporableMm - Water that leaves the surface before it slows, millimeters; below `evaporableMm`
 * @param options.evaporableMm - Water that can leave the surface at all, millimeters; above 0
 * @param options.totalAvailableMm - Total available water, millimeters; above 0
 * @param options.depletionFraction - Share taken before stress, fitted to the day; above 0, below 1
 * @param options.dayOrder - `start-of-day` or `after-rain`
 * @returns Both depletions at the end of the day, evaporation, transpiration and drainage in millimeters, Ks and Kr
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 71, 74, 77 to 80, 85 to 88; examples 35 and 38 for the other order
 * @example dualCoefficientDay({ surfaceDepletionMm: 0, depletionMm: 0, rainMm: 0, referenceMm: 4.5, basalCoefficient: 0.15, maximumCoefficient: 1.2, exposedShare: 1, readilyEvaporableMm: 9, evaporableMm: 20, totalAvailableMm: 60, depletionFraction: 0.6, dayOrder: 'after-rain' }).surfaceDepletionMm //=> 4.725
 */
export function dualCoefficientDay({
  surfaceDepletionMm,
  depletionMm,
  rainMm,
  referenceMm,
  basalCoefficient,
  maximumCoefficient,
  exposedShare,
  wettedShare = 1,
  readilyEvaporableMm,
  evaporableMm,
  totalAvailableMm,
  depletionFraction,
  dayOrder,
}: DualCoefficientInputs): DualCoefficientDay {
  need('dualCoefficientDay', 'surfaceDepletionMm', surfaceDepletionMm, { atLeast: 0 });
  need('dualCoefficientDay', 'depletionMm', depletionMm, { atLeast: 0 });
  need('dualCoefficientDay', 'rainMm', rainMm, { atLeast: 0 });
  need('dualCoefficientDay', 'referenceMm', referenceMm, { atLeast: 0 });
  need('dualCoefficientDay', 'wettedShare', wettedShare, { above: 0, atMost: 1 });
  const afterRain = dayOrder === 'after-rain';
  const wettedSurface = Math.max(0, surfaceDepletionMm - rainMm / wettedShare);
  const wettedRoots = Math.max(0, depletionMm - rainMm);

  const reduction = evaporationReduction({ surfaceDepletionMm: afterRain ? wettedSurface : surfaceDepletionMm, readilyEvaporableMm, evaporableMm });
  const evaporation = evaporationCoefficient({ reduction, maximumCoefficient, basalCoefficient, exposedShare });
  const stress = stressCoefficient({ depletionMm: afterRain ? wettedRoots : depletionMm, totalAvailableMm, depletionFraction });

  const heldMm = totalAvailableMm - (afterRain ? wettedRoots : depletionMm - rainMm);
  const evaporationMm = Math.min(evaporation * referenceMm, exposedShare * (evaporableMm - wettedSurface), heldMm);
  const transpirationMm = Math.min(stress * basalCoefficient * referenceMm, heldMm - evaporationMm);
  const before = (afterRain ? wettedRoots : depletionMm - rainMm) + evaporationMm + transpirationMm;
  return {
    surfaceDepletionMm: wettedSurface + evaporationMm / exposedShare,
    depletionMm: Math.max(0, before),
    evaporationMm,
    transpirationMm,
    drainageMm: afterRain ? Math.max(0, rainMm - depletionMm) : Math.max(0, -before),
    stress,
    evaporationReduction: reduction,
  };
}
