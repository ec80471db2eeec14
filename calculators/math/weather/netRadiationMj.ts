import { need } from '../need.ts';

/** Stefan-Boltzmann constant, megajoules per kelvin to the fourth, square meter and day. */
const stefanBoltzmann = 4.903e-9;
/** Share of sunshine that short green grass throws back. */
const grassAlbedo = 0.23;

/**
 * Sunshine that short grass keeps: Rns = (1 − 0.23) Rs, with Rs = `solarMj`.
 * @param solarMj - Solar radiation at the ground, megajoules per square meter and day; at least 0
 * @returns Net shortwave radiation, megajoules per square meter and day
 * @throws RangeError if `solarMj` is negative
 * @source allen-1998, eq. 38
 * @example netShortwaveMj(22.07) //=> 17.0
 */
export function netShortwaveMj(solarMj: number): number {
  need('netShortwaveMj', 'solarMj', solarMj, { atLeast: 0 });
  return (1 - grassAlbedo) * solarMj;
}

/**
 * Heat that a black surface sends out in a day at a temperature: σ T⁴, with T = `tempC` + 273.16.
 * @param tempC - Temperature, degrees Celsius; above -273.16
 * @returns Radiation, megajoules per square meter and day
 * @throws RangeError if `tempC` is outside its range
 * @source allen-1998, eq. 39 and annex 2, table 2.8
 * @example blackBodyRadiationMj(20) //=> 36.21
 */
export function blackBodyRadiationMj(tempC: number): number {
  need('blackBodyRadiationMj', 'tempC', tempC, { above: -273.16 });
  return stefanBoltzmann * (tempC + 273.16) ** 4;
}

/**
 * Heat that the ground loses to the sky: Rnl = σ (Tmax⁴ + Tmin⁴) / 2 · (0.34 − 0.14 √ea) · (1.35 Rs / Rso − 0.35), with Tmin = `minTempC`, Tmax =
 * `maxTempC`, ea = `vaporPressureKpa`, Rs = `solarMj`, Rso = `clearSkyMj`; Rs / Rso counts as 1 at most.
 * @param options.minTempC - Lowest air temperature of the day, degrees Celsius; above -273.16
 * @param options.maxTempC - Highest air temperature of the day, degrees Celsius; above -273.16
 * @param options.vaporPressureKpa - Actual vapor pressure, kilopascals; at least 0
 * @param options.solarMj - Solar radiation at the ground, megajoules per square meter and day; at least 0
 * @param options.clearSkyMj - Clear-sky radiation, megajoules per square meter and day; above 0
 * @returns Net outgoing longwave radiation, megajoules per square meter and day
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 39
 * @example netLongwaveMj({ minTempC: 19.1, maxTempC: 25.1, vaporPressureKpa: 2.1, solarMj: 14.5, clearSkyMj: 18.8 }) //=> 3.5
 */
export function netLongwaveMj({
  minTempC,
  maxTempC,
  vaporPressureKpa,
  solarMj,
  clearSkyMj,
}: {
  readonly minTempC: number;
  readonly maxTempC: number;
  readonly vaporPressureKpa: number;
  readonly solarMj: number;
  readonly clearSkyMj: number;
}): number {
  need('netLongwaveMj', 'vaporPressureKpa', vaporPressureKpa, { atLeast: 0 });
  need('netLongwaveMj', 'solarMj', solarMj, { atLeast: 0 });
  need('netLongwaveMj', 'clearSkyMj', clearSkyMj, { above: 0 });
  const emitted = (blackBodyRadiationMj(maxTempC) + blackBodyRadiationMj(minTempC)) / 2;
  const clearness = Math.min(1, solarMj / clearSkyMj);
  return emitted * (0.34 - 0.14 * Math.sqrt(vaporPressureKpa)) * (1.35 * clearness - 0.35);
}

/**
 * Radiation that is left to warm and dry the ground: Rn = Rns − Rnl, from the same values as the two parts.
 * @param options.minTempC - Lowest air temperature of the day, degrees Celsius; above -273.16
 * @param options.maxTempC - Highest air temperature of the day, degrees Celsius; above -273.16
 * @param options.vaporPressureKpa - Actual vapor pressure, kilopascals; at least 0
 * @param options.solarMj - Solar radiation at the ground, megajoules per square meter and day; at least 0
 * @param options.clearSkyMj - Clear-sky radiation, megajoules per square meter and day; above 0
 * @returns Net radiation, megajoules per square meter and day
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 40
 * @example netRadiationMj({ minTempC: 19.1, maxTempC: 25.1, vaporPressureKpa: 2.1, solarMj: 14.5, clearSkyMj: 18.8 }) //=> 7.6
 */
export function netRadiationMj(options: {
  readonly minTempC: number;
  readonly maxTempC: number;
  readonly vaporPressureKpa: number;
  readonly solarMj: number;
  readonly clearSkyMj: number;
}): number {
  return netShortwaveMj(options.solarMj) - netLongwaveMj(options);
}
