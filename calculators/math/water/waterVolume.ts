import { need } from '../need.ts';

/** Square feet in an acre, by definition. */
export const squareFeetPerAcre = 43_560;
/** Cubic inches in a US gallon, by definition. */
export const cubicInchesPerGallon = 231;
/** Cubic feet in one inch of water on one acre: 43,560 / 12. */
export const cubicFeetPerInchAcre = squareFeetPerAcre / 12;
/** Gallons in a cubic foot: 12³ / 231. */
export const gallonsPerCubicFoot = 12 ** 3 / cubicInchesPerGallon;
/** Liters in a cubic foot: 3.048³ decimeters, by definition. */
export const litersPerCubicFoot = 3.048 ** 3;
/** Pounds in a kilogram: 1 / 0.45359237, by definition. */
export const poundsPerKilogram = 1 / 0.45359237;

/**
 * Gallons in a depth of water on an area: V = 27,154.29 d A, with d A = `inchAcres`; the factor is 43,560 / 12 × 1,728 / 231.
 * @param inchAcres - Depth times area, inches times acres; 0 or more
 * @returns Water, US gallons
 * @throws RangeError if `inchAcres` is negative
 * @source common practice
 * @example inchAcresToGallons(1) //=> 27154
 */
export function inchAcresToGallons(inchAcres: number): number {
  return inchAcresToCubicFeet(inchAcres) * gallonsPerCubicFoot;
}

/**
 * Cubic feet in a depth of water on an area: V = 3,630 d A, with d A = `inchAcres`.
 * @param inchAcres - Depth times area, inches times acres; 0 or more
 * @returns Water, cubic feet
 * @throws RangeError if `inchAcres` is negative
 * @source common practice
 * @example inchAcresToCubicFeet(1) //=> 3630
 */
export function inchAcresToCubicFeet(inchAcres: number): number {
  need('inchAcresToCubicFeet', 'inchAcres', inchAcres, { atLeast: 0 });
  return inchAcres * cubicFeetPerInchAcre;
}

/**
 * Acre-feet in a depth of water on an area: V = d A / 12, with d A = `inchAcres`.
 * @param inchAcres - Depth times area, inches times acres; 0 or more
 * @returns Water, acre-feet
 * @throws RangeError if `inchAcres` is negative
 * @source common practice
 * @example inchAcresToAcreFeet(702.5) //=> 58.54
 */
export function inchAcresToAcreFeet(inchAcres: number): number {
  need('inchAcresToAcreFeet', 'inchAcres', inchAcres, { atLeast: 0 });
  return inchAcres / 12;
}

/**
 * Liters in a depth of water on an area: V = 102,790 d A, with d A = `inchAcres`.
 * @param inchAcres - Depth times area, inches times acres; 0 or more
 * @returns Water, liters
 * @throws RangeError if `inchAcres` is negative
 * @source common practice
 * @example inchAcresToLiters(1) //=> 102790
 */
export function inchAcresToLiters(inchAcres: number): number {
  return inchAcresToCubicFeet(inchAcres) * litersPerCubicFoot;
}

/**
 * Short tons that a depth of water on an area weighs, at one kilogram a liter: W = 113.3 d A, with d A = `inchAcres`.
 * @param inchAcres - Depth times area, inches times acres; 0 or more
 * @returns Weight of the water, short tons of 2,000 lb
 * @throws RangeError if `inchAcres` is negative
 * @source common practice
 * @example inchAcresToTons(1) //=> 113.3
 */
export function inchAcresToTons(inchAcres: number): number {
  return (inchAcresToLiters(inchAcres) * poundsPerKilogram) / 2000;
}

/**
 * Acre-inches in a volume of water: the depth in inches that it makes on one acre, G / 27,154.29 with G = `gallons`.
 * @param gallons - Water, US gallons; 0 or more
 * @returns Depth times area, inches times acres
 * @throws RangeError if `gallons` is negative
 * @source common practice
 * @example gallonsToInchAcres(325851) //=> 12.0
 */
export function gallonsToInchAcres(gallons: number): number {
  need('gallonsToInchAcres', 'gallons', gallons, { atLeast: 0 });
  return gallons / gallonsPerCubicFoot / cubicFeetPerInchAcre;
}

/** One amount of water in every unit that people ask for. */
export interface WaterAmounts {
  readonly inchAcres: number;
  readonly acreFeet: number;
  readonly cubicFeet: number;
  readonly gallons: number;
  readonly liters: number;
  readonly cubicMeters: number;
  readonly tons: number;
}

/**
 * Water that a depth makes on an area: V = d A, with d = `depthIn` and A = `areaAc`, in every unit that people ask for.
 * @param depthIn - Depth of water, inches; 0 or more
 * @param areaAc - Area, acres; 0 or more
 * @returns Inch-acres (acre-inches), acre-feet, cubic feet, US gallons, liters, cubic meters, short tons
 * @throws RangeError if the depth or the area is negative
 * @source common practice
 * @example waterVolume(1, 1).gallons //=> 27154
 */
export function waterVolume(depthIn: number, areaAc: number): WaterAmounts {
  need('waterVolume', 'depthIn', depthIn, { atLeast: 0 });
  need('waterVolume', 'areaAc', areaAc, { atLeast: 0 });
  const inchAcres = depthIn * areaAc;
  const liters = inchAcresToLiters(inchAcres);
  return {
    inchAcres,
    acreFeet: inchAcresToAcreFeet(inchAcres),
    cubicFeet: inchAcresToCubicFeet(inchAcres),
    gallons: inchAcresToGallons(inchAcres),
    liters,
    cubicMeters: liters / 1000,
    tons: inchAcresToTons(inchAcres),
  };
}
