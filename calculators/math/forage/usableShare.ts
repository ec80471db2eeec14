import { slopeReduction, waterDistanceReduction } from '../../tables/accessReduction.ts';
import { need, needThere } from '../need.ts';

/**
 * Share of an area that cattle use by its distance from water and its slope: (1 - w / 100)(1 - s / 100), with w, s the published reductions of the
 * classes in which `waterDistanceMi` and `slopePercent` fall. Guides; what the cattle do on the place comes first.
 * @param options.waterDistanceMi - Distance to water, miles; at least 0
 * @param options.slopePercent - Slope, percent; at least 0
 * @returns Share of the area that counts, no unit, 0 to 1
 * @throws RangeError if a value is outside its range
 * @source holechek-1988, reductions by distance and slope
 * @example usableShare({ waterDistanceMi: 1.5, slopePercent: 20 }) //=> 0.35
 */
export function usableShare({ waterDistanceMi, slopePercent }: { readonly waterDistanceMi: number; readonly slopePercent: number }): number {
  need('usableShare', 'waterDistanceMi', waterDistanceMi, { atLeast: 0 });
  need('usableShare', 'slopePercent', slopePercent, { atLeast: 0 });
  const kept = (classes: readonly { readonly upTo: number; readonly reductionPercent: number }[], value: number): number =>
    1 -
    needThere(
      'usableShare',
      'class',
      classes.find(({ upTo }) => value <= upTo),
    ).reductionPercent /
      100;
  return kept(waterDistanceReduction, waterDistanceMi) * kept(slopeReduction, slopePercent);
}
