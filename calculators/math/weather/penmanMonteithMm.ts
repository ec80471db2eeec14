import { need } from '../need.ts';
import { psychrometricConstantKpaPerC } from './atmosphericPressureKpa.ts';
import { clearSkyRadiationMj } from './clearSkyRadiationMj.ts';
import { extraterrestrialRadiationMj } from './extraterrestrialRadiationMj.ts';
import { netRadiationMj } from './netRadiationMj.ts';
import { meanSaturationVaporPressureKpa, saturationVaporPressureKpa, vaporPressureSlopeKpaPerC } from './saturationVaporPressureKpa.ts';
import { type Setting, solarRadiationFromRangeMj } from './solarRadiationMj.ts';

/** Slowest wind that the formula should be given, meters per second: below it, air still moves by its own warmth. */
const leastWindMPerS = 0.5;

/**
 * Reference evapotranspiration of well-watered short grass by the Penman-Monteith equation: ETo = [0.408 Δ (Rn − G) + γ 900 / (T + 273) u2 (es −
 * ea)] / [Δ + γ (1 + 0.34 u2)], with T the mean of `minTempC` and `maxTempC`, Rn = `netRadiationMj`, G = `soilHeatMj`, u2 = `windMPerS` (0.5 at
 * least), ea = `vaporPressureKpa`, γ by `elevationM`.
 * @param options.minTempC - Lowest air temperature of the day, degrees Celsius; at most `maxTempC`
 * @param options.maxTempC - Highest air temperature of the day, degrees Celsius; -60 to 70
 * @param options.vaporPressureKpa - Actual vapor pressure, kilopascals; at least 0
 * @param options.windMPerS - Wind at 2 m, meters per second; at least 0
 * @param options.netRadiationMj - Net radiation, megajoules per square meter and day
 * @param options.soilHeatMj - Heat that goes into the soil, megajoules per square meter and day; 0 for a single day
 * @param options.elevationM - Height above sea level, meters; -500 to 9000
 * @returns Reference evapotranspiration, millimeters per day
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 6
 * @example penmanMonteithMm({ minTempC: 12.3, maxTempC: 21.5, vaporPressureKpa: 1.409, windMPerS: 2.078, netRadiationMj: 13.28, soilHeatMj: 0, elevationM: 100 }) //=> 3.88
 */
export function penmanMonteithMm({
  minTempC,
  maxTempC,
  vaporPressureKpa,
  windMPerS,
  netRadiationMj,
  soilHeatMj,
  elevationM,
}: {
  readonly minTempC: number;
  readonly maxTempC: number;
  readonly vaporPressureKpa: number;
  readonly windMPerS: number;
  readonly netRadiationMj: number;
  readonly soilHeatMj: number;
  readonly elevationM: number;
}): number {
  need('penmanMonteithMm', 'maxTempC', maxTempC, { atMost: 70 });
  need('penmanMonteithMm', 'minTempC', minTempC, { atLeast: -60, atMost: maxTempC });
  need('penmanMonteithMm', 'vaporPressureKpa', vaporPressureKpa, { atLeast: 0 });
  need('penmanMonteithMm', 'windMPerS', windMPerS, { atLeast: 0 });
  need('penmanMonteithMm', 'netRadiationMj', netRadiationMj);
  need('penmanMonteithMm', 'soilHeatMj', soilHeatMj);
  const meanC = (minTempC + maxTempC) / 2;
  const wind = Math.max(windMPerS, leastWindMPerS);
  const slope = vaporPressureSlopeKpaPerC(meanC);
  const gamma = psychrometricConstantKpaPerC(elevationM);
  const deficit = meanSaturationVaporPressureKpa(minTempC, maxTempC) - vaporPressureKpa;
  const radiationTerm = 0.408 * slope * (netRadiationMj - soilHeatMj);
  const windTerm = (gamma * 900 * wind * deficit) / (meanC + 273);
  return (radiationTerm + windTerm) / (slope + gamma * (1 + 0.34 * wind));
}

/**
 * Reference evapotranspiration by the same equation where only temperatures were read: the air is as damp as at the night's lowest (dew point =
 * Tmin less `drynessC`), sunshine follows the range of temperature, the wind is `windMPerS`, 2 if nobody knows. Tmin = `minTempC`, Tmax =
 * `maxTempC`, φ = `latitudeDeg`, J = `dayOfYear`, z = `elevationM`.
 * @param options.minTempC - Lowest air temperature of the day, degrees Celsius; at most `maxTempC`
 * @param options.maxTempC - Highest air temperature of the day, degrees Celsius; -60 to 70
 * @param options.latitudeDeg - Latitude, degrees, south negative; -66 to 66, where every day has a sunrise
 * @param options.dayOfYear - Day of the year; a whole number, 1 to 366
 * @param options.elevationM - Height above sea level, meters; -500 to 9000
 * @param options.setting - `interior` or `coastal`
 * @param options.windMPerS - Wind at 2 m, meters per second; at least 0; 2 if left out
 * @param options.drynessC - Degrees Celsius that the dew point stays below the lowest temperature; 0 to 10; 0 if left out, 2 to 3 in dry places
 * @returns Reference evapotranspiration, millimeters per day, 0 at least
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 6, 48 and 50, and p. 64
 * @example penmanMonteithFromTemperatureMm({ minTempC: 14.8, maxTempC: 26.6, latitudeDeg: 45 + 43 / 60, dayOfYear: 196, elevationM: 200, setting: 'interior' }) //=> 4.56
 */
export function penmanMonteithFromTemperatureMm({
  minTempC,
  maxTempC,
  latitudeDeg,
  dayOfYear,
  elevationM,
  setting,
  windMPerS = 2,
  drynessC = 0,
}: {
  readonly minTempC: number;
  readonly maxTempC: number;
  readonly latitudeDeg: number;
  readonly dayOfYear: number;
  readonly elevationM: number;
  readonly setting: Setting;
  readonly windMPerS?: number;
  readonly drynessC?: number;
}): number {
  need('penmanMonteithFromTemperatureMm', 'latitudeDeg', latitudeDeg, { atLeast: -66, atMost: 66 });
  need('penmanMonteithFromTemperatureMm', 'drynessC', drynessC, { atLeast: 0, atMost: 10 });
  const extraterrestrialMj = extraterrestrialRadiationMj(latitudeDeg, dayOfYear);
  const vaporPressureKpa = saturationVaporPressureKpa(minTempC - drynessC);
  const solarMj = solarRadiationFromRangeMj({ extraterrestrialMj, minTempC, maxTempC, elevationM, setting });
  const clearSkyMj = clearSkyRadiationMj(extraterrestrialMj, elevationM);
  const netMj = netRadiationMj({ minTempC, maxTempC, vaporPressureKpa, solarMj, clearSkyMj });
  return Math.max(0, penmanMonteithMm({ minTempC, maxTempC, vaporPressureKpa, windMPerS, netRadiationMj: netMj, soilHeatMj: 0, elevationM }));
}
