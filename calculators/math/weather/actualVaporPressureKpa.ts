import { need } from '../need.ts';
import { saturationVaporPressureKpa } from './saturationVaporPressureKpa.ts';

/**
 * Vapor pressure of the air from the day's extremes: ea = [e°(Tmin) RHmax + e°(Tmax) RHmin] / 200, with Tmin = `minTempC`, Tmax = `maxTempC`,
 * RHmin = `minHumidityPercent`, RHmax = `maxHumidityPercent`: the dampest air is that of the coldest hour.
 * @param options.minTempC - Lowest air temperature of the day, degrees Celsius; -60 to 70
 * @param options.maxTempC - Highest air temperature of the day, degrees Celsius; -60 to 70
 * @param options.minHumidityPercent - Lowest relative humidity, percent; 0 to 100
 * @param options.maxHumidityPercent - Highest relative humidity, percent; 0 to 100
 * @returns Actual vapor pressure, kilopascals
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 17
 * @example actualVaporPressureKpa({ minTempC: 12.3, maxTempC: 21.5, minHumidityPercent: 63, maxHumidityPercent: 84 }) //=> 1.409
 */
export function actualVaporPressureKpa({
  minTempC,
  maxTempC,
  minHumidityPercent,
  maxHumidityPercent,
}: {
  readonly minTempC: number;
  readonly maxTempC: number;
  readonly minHumidityPercent: number;
  readonly maxHumidityPercent: number;
}): number {
  need('actualVaporPressureKpa', 'minHumidityPercent', minHumidityPercent, { atLeast: 0, atMost: 100 });
  need('actualVaporPressureKpa', 'maxHumidityPercent', maxHumidityPercent, { atLeast: 0, atMost: 100 });
  return (saturationVaporPressureKpa(minTempC) * maxHumidityPercent + saturationVaporPressureKpa(maxTempC) * minHumidityPercent) / 200;
}
