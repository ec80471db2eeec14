import { availableWaterByTexture } from '../../tables/availableWater.ts';
import type { Texture } from '../../tables/soilGroups.ts';

/**
 * Water that a stone-free soil holds for plants, by the feel of its texture: the ends of the published span and its middle. A stand-in: what the soil
 * survey says of this soil goes before it. The list has no silt; it is put beside silt loam here.
 * @param texture - One of the twelve texture classes
 * @returns Low, middle and high, inches of water in a foot of soil
 * @throws Nothing: every texture has a row
 * @source ucdavis-drought-awc, available water by texture
 * @example availableWaterInPerFt('sandy-loam') //=> { lowInPerFt: 1.25, middleInPerFt: 1.5, highInPerFt: 1.75 }
 */
export function availableWaterInPerFt(texture: Texture): {
  readonly lowInPerFt: number;
  readonly middleInPerFt: number;
  readonly highInPerFt: number;
} {
  const { low, high } = availableWaterByTexture.inPerFt[texture === 'silt' ? 'silt-loam' : texture];
  return { lowInPerFt: low, middleInPerFt: (low + high) / 2, highInPerFt: high };
}
