import { need } from '../need.ts';

/**
 * Sunshine that reaches the ground under a clear sky: Rso = (0.75 + 0.00002 z) Ra, with Ra = `extraterrestrialMj`, z = `elevationM`.
 * @param extraterrestrialMj - Extraterrestrial radiation, megajoules per square meter and day; at least 0
 * @param elevationM - Height above sea level, meters; -500 to 9000
 * @returns Clear-sky radiation, megajoules per square meter and day
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 37
 * @example clearSkyRadiationMj(41.09, 100) //=> 30.90
 */
export function clearSkyRadiationMj(extraterrestrialMj: number, elevationM: number): number {
  need('clearSkyRadiationMj', 'extraterrestrialMj', extraterrestrialMj, { atLeast: 0 });
  need('clearSkyRadiationMj', 'elevationM', elevationM, { atLeast: -500, atMost: 9000 });
  return (0.75 + 2e-5 * elevationM) * extraterrestrialMj;
}
