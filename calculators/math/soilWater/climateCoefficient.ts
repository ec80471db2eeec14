import { need } from '../need.ts';

/** What a windier, drier climate than the table's (2 m/s, 45 %) adds to a coefficient: [0.04 (u2 − 2) − 0.004 (RHmin − 45)] (h / 3)^0.3. */
function climateIncrement(name: string, windMPerS: number, minHumidityPercent: number, heightM: number): number {
  need(name, 'windMPerS', windMPerS, { atLeast: 1, atMost: 6 });
  need(name, 'minHumidityPercent', minHumidityPercent, { atLeast: 20, atMost: 80 });
  need(name, 'heightM', heightM, { atLeast: 0, atMost: 10 });
  return (0.04 * (windMPerS - 2) - 0.004 * (minHumidityPercent - 45)) * (heightM / 3) ** 0.3;
}

/**
 * Crop coefficient of the middle of the season, fitted to the climate: Kc = Kc(table) + [0.04 (u2 − 2) − 0.004 (RHmin − 45)] (h / 3)^0.3,
 * with Kc(table) = `tableCoefficient`, u2 = `windMPerS`, RHmin = `minHumidityPercent`, h = `heightM`. Not for swards below 0.1 m.
 * @param options.tableCoefficient - Coefficient of the table, for the end of the season one past 0.45, no unit; above 0, at most 1.5
 * @param options.windMPerS - Mean wind at 2 m, meters per second; 1 to 6
 * @param options.minHumidityPercent - Mean of the lowest relative humidity of each day, percent; 20 to 80
 * @param options.heightM - Height of the plants, meters; 0.1 to 10
 * @returns Crop coefficient, no unit
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 62 and 65
 * @example climateCoefficient({ tableCoefficient: 1.2, windMPerS: 4.6, minHumidityPercent: 44, heightM: 2 }) //=> 1.30
 */
export function climateCoefficient({
  tableCoefficient,
  windMPerS,
  minHumidityPercent,
  heightM,
}: {
  readonly tableCoefficient: number;
  readonly windMPerS: number;
  readonly minHumidityPercent: number;
  readonly heightM: number;
}): number {
  need('climateCoefficient', 'tableCoefficient', tableCoefficient, { above: 0, atMost: 1.5 });
  need('climateCoefficient', 'heightM', heightM, { atLeast: 0.1 });
  return tableCoefficient + climateIncrement('climateCoefficient', windMPerS, minHumidityPercent, heightM);
}

/**
 * The most that a wet surface, plants and soil together, can use: Kcmax = max(1.2 + [0.04 (u2 − 2) − 0.004 (RHmin − 45)] (h / 3)^0.3, Kcb + 0.05),
 * with u2 = `windMPerS`, RHmin = `minHumidityPercent`, h = `heightM`, Kcb = `basalCoefficient`.
 * @param options.basalCoefficient - Basal crop coefficient, no unit; at least 0
 * @param options.windMPerS - Mean wind at 2 m, meters per second; 1 to 6
 * @param options.minHumidityPercent - Mean of the lowest relative humidity of each day, percent; 20 to 80
 * @param options.heightM - Height of the plants, meters; 0 to 10
 * @returns Upper limit of the crop coefficient, no unit
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 72
 * @example maximumCoefficient({ basalCoefficient: 0.3, windMPerS: 1.6, minHumidityPercent: 35, heightM: 0.3 }) //=> 1.21
 */
export function maximumCoefficient({
  basalCoefficient,
  windMPerS,
  minHumidityPercent,
  heightM,
}: {
  readonly basalCoefficient: number;
  readonly windMPerS: number;
  readonly minHumidityPercent: number;
  readonly heightM: number;
}): number {
  need('maximumCoefficient', 'basalCoefficient', basalCoefficient, { atLeast: 0, atMost: 1.5 });
  return Math.max(1.2 + climateIncrement('maximumCoefficient', windMPerS, minHumidityPercent, heightM), basalCoefficient + 0.05);
}
