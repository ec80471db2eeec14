import type { SoilGroup } from '../../tables/curveNumbers.ts';
import { type Texture, textureGroups } from '../../tables/soilGroups.ts';
import { need } from '../need.ts';

const order: readonly SoilGroup[] = ['a', 'b', 'c', 'd'];

/**
 * Hydrologic soil group guessed from `texture` and from how deep rock, hardpan or standing water lies. A stand-in: the soil survey's own group goes
 * before it. Texture by the 1986 list, which was made for disturbed soils. Depth after the 2009 rule, which puts everything shallower than
 * 20 in into D and asks for a faster soil between 20 and 40 in: here one group later (own reading of that rule).
 * @param texture - Texture of the tightest layer within reach, one of the twelve classes
 * @param depthToBarrierIn - Depth to rock, hardpan or standing water, inches; 0 or more, or Infinity if there is none within reach
 * @returns Hydrologic soil group
 * @throws RangeError if `depthToBarrierIn` is negative
 * @source tr55-1986, appendix A (texture); nrcs-neh630-07-2009, table 7-1 (20 in); our own (20 to 40 in)
 * @example soilGroupFromTexture('silt-loam', 30) //=> 'c'
 */
export function soilGroupFromTexture(texture: Texture, depthToBarrierIn: number): SoilGroup {
  if (depthToBarrierIn !== Infinity) need('soilGroupFromTexture', 'depthToBarrierIn', depthToBarrierIn, { atLeast: 0 });
  if (depthToBarrierIn < 20) return 'd';
  const group = textureGroups.groups[texture];
  return depthToBarrierIn <= 40 ? (order[order.indexOf(group) + 1] ?? 'd') : group;
}
