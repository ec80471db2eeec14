import { need } from '../need.ts';

/**
 * How the ground is grazed, in the producer's words: `rested` not grazed, or clipped for hay; `light` lightly or only now and then, most of the
 * growth left; `moderate` about half left; `heavy` grazed hard, little growth and no mulch left.
 */
export type Grazing = 'rested' | 'light' | 'moderate' | 'heavy';
export type HydrologicCondition = 'poor' | 'fair' | 'good';

/**
 * Hydrologic condition from ground cover AND grazing, by the notes under the curve-number tables.
 * Poor: cover below `poorBelowPercent`, or `heavy` (the notes' "heavily grazed with no mulch"). Good: cover above `goodAbovePercent` and `rested` or
 * `light` (their "lightly or only occasionally grazed"). Fair: all between, and so `moderate` at any cover from the lower cut-point up.
 * @param options.groundCoverPercent - Ground covered by plants and litter, percent; 0 to 100
 * @param options.grazing - How the ground is grazed; one of four words
 * @param options.poorBelowPercent - Cut-point of the cover's own table, percent (50 humid pasture, 30 dry range); 0 to 100
 * @param options.goodAbovePercent - Cut-point of the cover's own table, percent (75 humid pasture, 70 dry range); from `poorBelowPercent` to 100
 * @returns Condition class
 * @throws RangeError if a percentage is outside 0 to 100 or the cut-points are in the wrong order
 * @source tr55-1986, notes of tables 2-2c and 2-2d
 * @example conditionClass({ groundCoverPercent: 90, grazing: 'heavy', poorBelowPercent: 50, goodAbovePercent: 75 }) //=> 'poor'
 */
export function conditionClass({
  groundCoverPercent,
  grazing,
  poorBelowPercent,
  goodAbovePercent,
}: {
  groundCoverPercent: number;
  grazing: Grazing;
  poorBelowPercent: number;
  goodAbovePercent: number;
}): HydrologicCondition {
  need('conditionClass', 'groundCoverPercent', groundCoverPercent, { atLeast: 0, atMost: 100 });
  need('conditionClass', 'poorBelowPercent', poorBelowPercent, { atLeast: 0, atMost: 100 });
  need('conditionClass', 'goodAbovePercent', goodAbovePercent, { atLeast: poorBelowPercent, atMost: 100 });
  if (grazing === 'heavy' || groundCoverPercent < poorBelowPercent) return 'poor';
  return groundCoverPercent > goodAbovePercent && grazing !== 'moderate' ? 'good' : 'fair';
}
