import { need } from '../need.ts';
import { inchAcresToGallons, squareFeetPerAcre } from './waterVolume.ts';

/**
 * Acres of a rectangle from two fence lengths or paced sides: A = ℓ w / 43,560, with ℓ = `lengthFt`, w = `widthFt`.
 * @param lengthFt - One side, feet; 0 or more
 * @param widthFt - The other side, feet; 0 or more
 * @returns Area, acres
 * @throws RangeError if a side is negative
 * @source common practice
 * @example rectangleAc(660, 660) //=> 10
 */
export function rectangleAc(lengthFt: number, widthFt: number): number {
  need('rectangleAc', 'lengthFt', lengthFt, { atLeast: 0 });
  need('rectangleAc', 'widthFt', widthFt, { atLeast: 0 });
  return (lengthFt * widthFt) / squareFeetPerAcre;
}

/**
 * Gallons of rain on a roof or other small surface: V = 0.6234 d a, with d = `depthIn`, a = `areaFt2`.
 * @param depthIn - Rain, inches; 0 or more
 * @param areaFt2 - Surface as seen from above, square feet; 0 or more
 * @returns Water, US gallons
 * @throws RangeError if a parameter is negative
 * @source common practice
 * @example roofGallons(1, 1000) //=> 623
 */
export function roofGallons(depthIn: number, areaFt2: number): number {
  need('roofGallons', 'depthIn', depthIn, { atLeast: 0 });
  need('roofGallons', 'areaFt2', areaFt2, { atLeast: 0 });
  return inchAcresToGallons((depthIn * areaFt2) / squareFeetPerAcre);
}
