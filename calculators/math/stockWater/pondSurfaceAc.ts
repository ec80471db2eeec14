import { need } from '../need.ts';
import { squareFeetPerAcre } from '../water/waterVolume.ts';

/**
 * Surface of a pond paced across twice, taken as an ellipse: A = π l w / 4 / 43,560, with l = `lengthFt`, w = `widthFt`.
 * @param lengthFt - Longest way across the water, feet; above 0
 * @param widthFt - Widest way square to it, feet; above 0
 * @returns Water surface, acres
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example pondSurfaceAc(250, 180) //=> 0.811
 */
export function pondSurfaceAc(lengthFt: number, widthFt: number): number {
  need('pondSurfaceAc', 'lengthFt', lengthFt, { above: 0 });
  need('pondSurfaceAc', 'widthFt', widthFt, { above: 0 });
  return (Math.PI * lengthFt * widthFt) / 4 / squareFeetPerAcre;
}

/**
 * Most surface that a walk round a pond can enclose: A = c² / (4 π) / 43,560, with c = `shoreFt`. A shore with bays holds less: it is a bound, no estimate.
 * @param shoreFt - Way round the water's edge, feet; above 0
 * @returns Greatest surface, acres
 * @throws RangeError if the way is not above 0
 * @source common practice
 * @example mostSurfaceAc(700) //=> 0.895
 */
export function mostSurfaceAc(shoreFt: number): number {
  need('mostSurfaceAc', 'shoreFt', shoreFt, { above: 0 });
  return shoreFt ** 2 / (4 * Math.PI) / squareFeetPerAcre;
}
