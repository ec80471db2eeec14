import { contouring } from '../../tables/contouring.ts';
import { need } from '../need.ts';

/**
 * Practice factor P for farming on the contour, and for strips of crop and meadow on the contour, with the slope length and strip width up to which they
 * hold. By class of slope; a slope between two printed classes goes to the steeper. Permanent pasture has P = 1 unless furrows run along its contour.
 * For use with the 1978 slope factor.
 * @param slopePercent - Steepness, percent; above 0, at most 25
 * @returns P and longest slope for contouring, feet; P and widest strip for strips, feet
 * @throws RangeError if `slopePercent` is outside its range: steeper ground gets no factor
 * @source wischmeier-smith-1978, tables 13 and 14 (from memory)
 * @example contourPractice(6) //=> { contourFactor: 0.5, lengthLimitFt: 200, stripFactor: 0.25, stripWidthFt: 100 }
 */
export function contourPractice(slopePercent: number): {
  readonly contourFactor: number;
  readonly lengthLimitFt: number;
  readonly stripFactor: number;
  readonly stripWidthFt: number;
} {
  need('contourPractice', 'slopePercent', slopePercent, { above: 0, atMost: 25 });
  const { toSlopePercent: _, ...practice } = contouring.rows.find(({ toSlopePercent }) => slopePercent <= toSlopePercent) ?? contouring.rows[6];
  return practice;
}
