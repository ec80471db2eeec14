import { need } from '../need.ts';

/** Energy of the sun's rays above the air, megajoules per square meter and minute. */
const solarConstantMjPerMinute = 0.082;

/**
 * Where the earth stands to the sun: inverse relative distance dr = 1 + 0.033 cos(2π J / 365), declination δ = 0.409 sin(2π J / 365 − 1.39),
 * with J = `dayOfYear` (365 in leap years too).
 * @param dayOfYear - Day of the year; a whole number, 1 to 366
 * @returns Inverse relative distance, no unit, and solar declination, radians
 * @throws RangeError if `dayOfYear` is outside its range
 * @source allen-1998, eq. 23 and 24
 * @example sunPosition(246).declinationRad //=> 0.120
 */
export function sunPosition(dayOfYear: number): { readonly inverseDistance: number; readonly declinationRad: number } {
  need('sunPosition', 'dayOfYear', dayOfYear, { atLeast: 1, atMost: 366, whole: true });
  const angle = (2 * Math.PI * dayOfYear) / 365;
  return { inverseDistance: 1 + 0.033 * Math.cos(angle), declinationRad: 0.409 * Math.sin(angle - 1.39) };
}

/**
 * Angle that the earth turns from noon to sunset: ωs = arccos(−tan φ tan δ), with φ = `latitudeDeg` and δ that of J = `dayOfYear`;
 * 0 where the sun stays down, π where it stays up.
 * @param latitudeDeg - Latitude, degrees, south negative; -90 to 90
 * @param dayOfYear - Day of the year; a whole number, 1 to 366
 * @returns Sunset hour angle, radians
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 25
 * @example sunsetHourAngleRad(-20, 246) //=> 1.527
 */
export function sunsetHourAngleRad(latitudeDeg: number, dayOfYear: number): number {
  need('sunsetHourAngleRad', 'latitudeDeg', latitudeDeg, { atLeast: -90, atMost: 90 });
  const { declinationRad } = sunPosition(dayOfYear);
  const cosine = -Math.tan((latitudeDeg * Math.PI) / 180) * Math.tan(declinationRad);
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}

/**
 * Radiation of a day on a level surface above the air: Ra = (24 · 60 / π) Gsc dr [ωs sin φ sin δ + cos φ cos δ sin ωs], with φ = `latitudeDeg`, J =
 * `dayOfYear`, Gsc = 0.0820.
 * @param latitudeDeg - Latitude, degrees, south negative; -90 to 90
 * @param dayOfYear - Day of the year; a whole number, 1 to 366
 * @returns Extraterrestrial radiation, megajoules per square meter and day
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 21
 * @example extraterrestrialRadiationMj(-20, 246) //=> 32.2
 */
export function extraterrestrialRadiationMj(latitudeDeg: number, dayOfYear: number): number {
  const sunset = sunsetHourAngleRad(latitudeDeg, dayOfYear);
  const { inverseDistance, declinationRad } = sunPosition(dayOfYear);
  const latitude = (latitudeDeg * Math.PI) / 180;
  const geometry = sunset * Math.sin(latitude) * Math.sin(declinationRad) + Math.cos(latitude) * Math.cos(declinationRad) * Math.sin(sunset);
  return ((24 * 60) / Math.PI) * solarConstantMjPerMinute * inverseDistance * geometry;
}

/**
 * Hours from sunrise to sunset: N = 24 ωs / π, with φ = `latitudeDeg`, J = `dayOfYear`.
 * @param latitudeDeg - Latitude, degrees, south negative; -90 to 90
 * @param dayOfYear - Day of the year; a whole number, 1 to 366
 * @returns Daylight, hours
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 34
 * @example daylightHours(-20, 246) //=> 11.7
 */
export function daylightHours(latitudeDeg: number, dayOfYear: number): number {
  return (24 * sunsetHourAngleRad(latitudeDeg, dayOfYear)) / Math.PI;
}

/**
 * Depth of water that an amount of energy evaporates: 0.408 mm for each megajoule, 1 / 2.45, with `energyMj`.
 * @param energyMj - Energy, megajoules per square meter; any finite number
 * @returns Water, millimeters
 * @throws RangeError if `energyMj` is not finite
 * @source allen-1998, eq. 20
 * @example evaporationEquivalentMm(32.2) //=> 13.1
 */
export function evaporationEquivalentMm(energyMj: number): number {
  need('evaporationEquivalentMm', 'energyMj', energyMj);
  return 0.408 * energyMj;
}
