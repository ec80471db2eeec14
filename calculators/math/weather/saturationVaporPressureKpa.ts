import { need } from '../need.ts';

/** Below and above these the formula was never meant to be used. */
const range = { atLeast: -60, atMost: 70 };

/**
 * Vapor pressure of air that can hold no more water: e°(T) = 0.6108 exp(17.27 T / (T + 237.3)), with T = `tempC`.
 * @param tempC - Air temperature, degrees Celsius; -60 to 70
 * @returns Saturation vapor pressure, kilopascals
 * @throws RangeError if `tempC` is outside its range
 * @source allen-1998, eq. 11
 * @example saturationVaporPressureKpa(20) //=> 2.338
 */
export function saturationVaporPressureKpa(tempC: number): number {
  need('saturationVaporPressureKpa', 'tempC', tempC, range);
  return 0.6108 * Math.exp((17.27 * tempC) / (tempC + 237.3));
}

/**
 * Mean saturation vapor pressure of a day: es = [e°(Tmax) + e°(Tmin)] / 2, with Tmin = `minTempC`, Tmax = `maxTempC`. That of the mean temperature
 * is too low.
 * @param minTempC - Lowest air temperature of the day, degrees Celsius; -60 to 70
 * @param maxTempC - Highest air temperature of the day, degrees Celsius; -60 to 70
 * @returns Mean saturation vapor pressure, kilopascals
 * @throws RangeError if a temperature is outside its range
 * @source allen-1998, eq. 12
 * @example meanSaturationVaporPressureKpa(12.3, 21.5) //=> 1.997
 */
export function meanSaturationVaporPressureKpa(minTempC: number, maxTempC: number): number {
  return (saturationVaporPressureKpa(minTempC) + saturationVaporPressureKpa(maxTempC)) / 2;
}

/**
 * Slope of the saturation vapor pressure curve: Δ = 4098 e°(T) / (T + 237.3)², with T = `tempC`.
 * @param tempC - Air temperature, degrees Celsius; -60 to 70
 * @returns Slope, kilopascals per degree Celsius
 * @throws RangeError if `tempC` is outside its range
 * @source allen-1998, eq. 13
 * @example vaporPressureSlopeKpaPerC(20) //=> 0.145
 */
export function vaporPressureSlopeKpaPerC(tempC: number): number {
  return (4098 * saturationVaporPressureKpa(tempC)) / (tempC + 237.3) ** 2;
}
