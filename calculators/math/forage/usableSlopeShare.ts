import { slopeReduction } from '../../tables/accessReduction.ts';
import { need, needThere } from '../need.ts';

/**
 * Share of an area that cattle use by its slope: 1 - s / 100, with s the published reduction of the class in which `slopePercent` falls. Guides; what
 * the cattle do on the place comes first.
 * @param options.slopePercent - Slope, percent; at least 0
 * @returns Share of the area that counts, no unit, 0 to 1
 * @throws RangeError if the slope is outside its range
 * @source holechek-1988, reductions by slope
 * @example usableSlopeShare({ slopePercent: 20 }) //=> 0.7
 */
export function usableSlopeShare({ slopePercent }: { readonly slopePercent: number }): number {
  need('usableSlopeShare', 'slopePercent', slopePercent, { atLeast: 0 });
  const found = slopeReduction.find(({ upTo }) => slopePercent <= upTo);
  return 1 - needThere('usableSlopeShare', 'class', found).reductionPercent / 100;
}
