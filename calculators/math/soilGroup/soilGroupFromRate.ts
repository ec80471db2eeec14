import type { SoilGroup } from '../../tables/curveNumbers.ts';
import { transmissionLimits } from '../../tables/soilGroups.ts';
import { need } from '../need.ts';

/**
 * Hydrologic soil group by the rule of 1986, from the rate at which wet soil passes water, r = `transmissionInPerHr`: up to 0.05 D, 0.15 C, 0.30 B,
 * above A. Kept apart from the rule of 2009. A rate from a ring on the surface is not this rate.
 * @param transmissionInPerHr - Least rate of transmission of the wetted profile, inches per hour; 0 or more
 * @returns Hydrologic soil group
 * @throws RangeError if `transmissionInPerHr` is negative
 * @source tr55-1986, appendix A
 * @example soilGroupFromRate(0.2) //=> 'b'
 */
export function soilGroupFromRate(transmissionInPerHr: number): SoilGroup {
  need('soilGroupFromRate', 'transmissionInPerHr', transmissionInPerHr, { atLeast: 0 });
  const { d, c, b } = transmissionLimits.inPerHr;
  return transmissionInPerHr <= d ? 'd' : transmissionInPerHr <= c ? 'c' : transmissionInPerHr <= b ? 'b' : 'a';
}
