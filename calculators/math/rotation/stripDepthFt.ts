import { need } from '../need.ts';
import { squareFeetPerAcre } from '../water/waterVolume.ts';

/**
 * How far to move the wire for one allotment: x = 43,560 A / L, with A = `areaAc` from the herd's need, L = `fenceLengthFt`.
 * @param options.areaAc - Area of the strip, acres; at least 0
 * @param options.fenceLengthFt - Length of the moving wire across the field, feet; above 0
 * @returns Depth of the strip, feet
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example stripDepthFt({ areaAc: 1, fenceLengthFt: 660 }) //=> 66
 */
export function stripDepthFt({ areaAc, fenceLengthFt }: { readonly areaAc: number; readonly fenceLengthFt: number }): number {
  need('stripDepthFt', 'areaAc', areaAc, { atLeast: 0 });
  need('stripDepthFt', 'fenceLengthFt', fenceLengthFt, { above: 0 });
  return (areaAc * squareFeetPerAcre) / fenceLengthFt;
}
