import { need } from '../need.ts';

/** One layer of the root zone, from the top down. */
export interface SoilLayer {
  readonly thicknessIn: number;
  /** Available water of the fine earth when full, inches in a foot. */
  readonly availableInPerFt: number;
  /** Stones, percent of the layer's volume; they hold nothing. */
  readonly stoneVolumePercent: number;
  /** How full the layer is today, percent of its available water, by feel or probe. */
  readonly filledPercent: number;
}

/**
 * Water that the root zone can hold for plants and what is in it today: Σ d a (1 − s)/12 over the layers down to the roots' end, with d the layer's thickness
 * in reach of roots, a its available water, s its share of stones; today's water is the same sum, each layer times its `filledPercent`.
 * @param layers - Layers from the top down; thickness above 0, available water 0 or more, stones 0 to below 100 %, filled 0 to 100 %
 * @param rootDepthIn - Depth of most roots, inches; above 0, at most the layers together
 * @returns Water held when full, water there today, and what is missing, inches
 * @throws RangeError if a number is outside its range or the layers end above the roots
 * @source allen-1998, eq. 82, layer by layer
 * @example rootZoneWater([{ thicknessIn: 48, availableInPerFt: 1.25, stoneVolumePercent: 0, filledPercent: 40 }], 48) //=> { holdsIn: 5, hasIn: 2, missingIn: 3 }
 */
export function rootZoneWater(
  layers: readonly SoilLayer[],
  rootDepthIn: number,
): { readonly holdsIn: number; readonly hasIn: number; readonly missingIn: number } {
  let topIn = 0;
  let holdsIn = 0;
  let hasIn = 0;
  for (const { thicknessIn, availableInPerFt, stoneVolumePercent, filledPercent } of layers) {
    need('rootZoneWater', 'thicknessIn', thicknessIn, { above: 0 });
    need('rootZoneWater', 'availableInPerFt', availableInPerFt, { atLeast: 0, atMost: 12 });
    need('rootZoneWater', 'stoneVolumePercent', stoneVolumePercent, { atLeast: 0, below: 100 });
    need('rootZoneWater', 'filledPercent', filledPercent, { atLeast: 0, atMost: 100 });
    const reachedIn = Math.min(thicknessIn, Math.max(0, rootDepthIn - topIn));
    const layerHoldsIn = (reachedIn * availableInPerFt * (1 - stoneVolumePercent / 100)) / 12;
    topIn += thicknessIn;
    holdsIn += layerHoldsIn;
    hasIn += (layerHoldsIn * filledPercent) / 100;
  }
  need('rootZoneWater', 'rootDepthIn', rootDepthIn, { above: 0, atMost: topIn });
  return { holdsIn, hasIn, missingIn: holdsIn - hasIn };
}
