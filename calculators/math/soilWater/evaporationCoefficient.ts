import { need } from '../need.ts';

/**
 * How far a drying surface has slowed its evaporation: Kr = (TEW − De) / (TEW − REW) once De is past REW, else 1,
 * with De = `surfaceDepletionMm`, REW = `readilyEvaporableMm`, TEW = `evaporableMm`.
 * @param options.surfaceDepletionMm - Water gone from the surface layer, millimeters; 0 to `evaporableMm`
 * @param options.readilyEvaporableMm - Water that goes before evaporation slows, millimeters; 0 to below `evaporableMm`
 * @param options.evaporableMm - Water that can go at all, millimeters; above 0
 * @returns Reduction coefficient, 0 to 1
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 74
 * @example evaporationReduction({ surfaceDepletionMm: 9.45, readilyEvaporableMm: 9, evaporableMm: 20 }) //=> 0.96
 */
export function evaporationReduction({
  surfaceDepletionMm,
  readilyEvaporableMm,
  evaporableMm,
}: {
  readonly surfaceDepletionMm: number;
  readonly readilyEvaporableMm: number;
  readonly evaporableMm: number;
}): number {
  need('evaporationReduction', 'evaporableMm', evaporableMm, { above: 0 });
  need('evaporationReduction', 'readilyEvaporableMm', readilyEvaporableMm, { atLeast: 0, below: evaporableMm });
  need('evaporationReduction', 'surfaceDepletionMm', surfaceDepletionMm, { atLeast: 0, atMost: evaporableMm });
  return Math.min(1, (evaporableMm - surfaceDepletionMm) / (evaporableMm - readilyEvaporableMm));
}

/**
 * Coefficient of evaporation from the ground: Ke = min(Kr (Kcmax − Kcb), few Kcmax), with Kr = `reduction`, Kcmax = `maximumCoefficient`, Kcb =
 * `basalCoefficient`, few = `exposedShare`.
 * @param options.reduction - Reduction coefficient of the surface, 0 to 1
 * @param options.maximumCoefficient - Upper limit of the crop coefficient, no unit; at least `basalCoefficient`
 * @param options.basalCoefficient - Basal crop coefficient, no unit; at least 0
 * @param options.exposedShare - Share of the ground wetted and exposed; 0.01 to 1
 * @returns Evaporation coefficient, no unit
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 71
 * @example evaporationCoefficient({ reduction: 1, maximumCoefficient: 1.2, basalCoefficient: 0.15, exposedShare: 1 }) //=> 1.05
 */
export function evaporationCoefficient({
  reduction,
  maximumCoefficient,
  basalCoefficient,
  exposedShare,
}: {
  readonly reduction: number;
  readonly maximumCoefficient: number;
  readonly basalCoefficient: number;
  readonly exposedShare: number;
}): number {
  need('evaporationCoefficient', 'reduction', reduction, { atLeast: 0, atMost: 1 });
  need('evaporationCoefficient', 'basalCoefficient', basalCoefficient, { atLeast: 0 });
  need('evaporationCoefficient', 'maximumCoefficient', maximumCoefficient, { atLeast: basalCoefficient });
  need('evaporationCoefficient', 'exposedShare', exposedShare, { atLeast: 0.01, atMost: 1 });
  return Math.min(reduction * (maximumCoefficient - basalCoefficient), exposedShare * maximumCoefficient);
}
