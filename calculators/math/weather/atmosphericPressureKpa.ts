import { need } from '../need.ts';

/**
 * Air pressure at a height above the sea: P = 101.3 ((293 − 0.0065 z) / 293)^5.26, with z = `elevationM`.
 * @param elevationM - Height above sea level, meters; -500 to 9000
 * @returns Air pressure, kilopascals
 * @throws RangeError if `elevationM` is outside its range
 * @source allen-1998, eq. 7
 * @example atmosphericPressureKpa(1800) //=> 81.8
 */
export function atmosphericPressureKpa(elevationM: number): number {
  need('atmosphericPressureKpa', 'elevationM', elevationM, { atLeast: -500, atMost: 9000 });
  return 101.3 * ((293 - 0.0065 * elevationM) / 293) ** 5.26;
}

/**
 * Psychrometric constant: γ = 0.000665 P, with P the air pressure at z = `elevationM`.
 * @param elevationM - Height above sea level, meters; -500 to 9000
 * @returns Psychrometric constant, kilopascals per degree Celsius
 * @throws RangeError if `elevationM` is outside its range
 * @source allen-1998, eq. 8
 * @example psychrometricConstantKpaPerC(1800) //=> 0.054
 */
export function psychrometricConstantKpaPerC(elevationM: number): number {
  return 0.665e-3 * atmosphericPressureKpa(elevationM);
}
