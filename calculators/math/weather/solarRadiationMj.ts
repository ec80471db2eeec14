import { need } from '../need.ts';
import { clearSkyRadiationMj } from './clearSkyRadiationMj.ts';

/** Whether a large water body, with the wind off it, tempers the days: `coastal`, or not: `interior`. */
export type Setting = 'interior' | 'coastal';

/** Adjustment coefficient kRs of the temperature-range formula. */
const rangeCoefficient: Readonly<Record<Setting, number>> = { interior: 0.16, coastal: 0.19 };

/**
 * Solar radiation at the ground from hours of sunshine: Rs = (0.25 + 0.50 n / N) Ra, with Ra = `extraterrestrialMj`, n = `sunshineHours`, N =
 * `daylightHours`.
 * @param extraterrestrialMj - Extraterrestrial radiation, megajoules per square meter and day; at least 0
 * @param sunshineHours - Hours of bright sunshine; 0 to `daylightHours`
 * @param daylightHours - Hours from sunrise to sunset; above 0, at most 24
 * @returns Solar radiation, megajoules per square meter and day
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 35
 * @example solarRadiationMj(41.09, 9.25, 16.1) //=> 22.1
 */
export function solarRadiationMj(extraterrestrialMj: number, sunshineHours: number, daylightHours: number): number {
  need('solarRadiationMj', 'extraterrestrialMj', extraterrestrialMj, { atLeast: 0 });
  need('solarRadiationMj', 'daylightHours', daylightHours, { above: 0, atMost: 24 });
  need('solarRadiationMj', 'sunshineHours', sunshineHours, { atLeast: 0, atMost: daylightHours });
  return (0.25 + (0.5 * sunshineHours) / daylightHours) * extraterrestrialMj;
}

/**
 * Solar radiation from the day's range of temperature, where nobody measured sunshine: Rs = kRs √(Tmax − Tmin) Ra, never more than under a clear sky,
 * with Ra = `extraterrestrialMj`, Tmin = `minTempC`, Tmax = `maxTempC`, z = `elevationM`, kRs 0.16 or 0.19 by `setting`.
 * @param options.extraterrestrialMj - Extraterrestrial radiation, megajoules per square meter and day; at least 0
 * @param options.minTempC - Lowest air temperature of the day, degrees Celsius; at most `maxTempC`
 * @param options.maxTempC - Highest air temperature of the day, degrees Celsius
 * @param options.elevationM - Height above sea level, meters; -500 to 9000
 * @param options.setting - `interior` or `coastal`
 * @returns Solar radiation, megajoules per square meter and day
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 50
 * @example solarRadiationFromRangeMj({ extraterrestrialMj: 40.6, minTempC: 14.8, maxTempC: 26.6, elevationM: 200, setting: 'interior' }) //=> 22.3
 */
export function solarRadiationFromRangeMj({
  extraterrestrialMj,
  minTempC,
  maxTempC,
  elevationM,
  setting,
}: {
  readonly extraterrestrialMj: number;
  readonly minTempC: number;
  readonly maxTempC: number;
  readonly elevationM: number;
  readonly setting: Setting;
}): number {
  need('solarRadiationFromRangeMj', 'maxTempC', maxTempC);
  need('solarRadiationFromRangeMj', 'minTempC', minTempC, { atMost: maxTempC });
  const fromRange = rangeCoefficient[setting] * Math.sqrt(maxTempC - minTempC) * extraterrestrialMj;
  return Math.min(fromRange, clearSkyRadiationMj(extraterrestrialMj, elevationM));
}
