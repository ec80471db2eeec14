import { waterDistanceReduction } from '../../tables/accessReduction.ts';
import { need } from '../need.ts';

/**
 * Share of a pasture that cattle use by how far its farthest ground lies from water: its rings around the water, each by the reduction that is printed
 * for ground at that distance, over the whole: sum of (1 - w_i / 100) (b_i² - a_i²) / d², with d = farthestMi and a_i, b_i the edges of ring i, d at most.
 * Takes a round pasture with one water in its middle, which has the most ground far out: a square or a long one has more of it near. Within the first
 * ring it is 1; it falls without a step and goes to 0. Guides; what the cattle do on the place comes first.
 * @param options.farthestMi - From the water to the farthest ground, miles; at least 0
 * @returns Share of the area that counts, no unit, above 0, at most 1
 * @throws RangeError if the distance is outside its range
 * @source rangelands-gateway-matching, step a; as rings of a circle: our own
 * @example nearWaterShare({ farthestMi: 2.1 }) //=> 0.567
 */
export function nearWaterShare({ farthestMi }: { readonly farthestMi: number }): number {
  need('nearWaterShare', 'farthestMi', farthestMi, { atLeast: 0 });
  if (farthestMi <= waterDistanceReduction[0].upTo) return 1 - waterDistanceReduction[0].reductionPercent / 100;
  let used = 0;
  let innerMi = 0;
  for (const { upTo, reductionPercent } of waterDistanceReduction) {
    const outerMi = Math.min(farthestMi, upTo);
    used += (1 - reductionPercent / 100) * (outerMi ** 2 - innerMi ** 2);
    innerMi = outerMi;
  }
  return used / farthestMi ** 2;
}
