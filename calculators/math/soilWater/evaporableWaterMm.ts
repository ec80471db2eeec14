import { need } from '../need.ts';

/**
 * Water that evaporation can take from the wetted surface layer before it stops: TEW = 1000 (θFC − 0.5 θWP) Ze, 5 % less for each 10 % of mulch,
 * with θFC = `fieldCapacityShare`, θWP = `wiltingPointShare`, Ze = `layerDepthM`, mulch = `mulchShare`.
 * @param options.fieldCapacityShare - Water at field capacity, share of the soil's volume; above `wiltingPointShare`, at most 0.6
 * @param options.wiltingPointShare - Water at the wilting point, share of the soil's volume; at least 0
 * @param options.layerDepthM - Depth of the layer that dries by evaporation, meters; 0.1 to 0.15; 0.1 if left out
 * @param options.mulchShare - Share of the ground under dead plant matter; 0 to 1; 0 if left out
 * @returns Total evaporable water, millimeters
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 73; mulch in chapter 11
 * @example evaporableWaterMm({ fieldCapacityShare: 0.23, wiltingPointShare: 0.1 }) //=> 18
 */
export function evaporableWaterMm({
  fieldCapacityShare,
  wiltingPointShare,
  layerDepthM = 0.1,
  mulchShare = 0,
}: {
  readonly fieldCapacityShare: number;
  readonly wiltingPointShare: number;
  readonly layerDepthM?: number;
  readonly mulchShare?: number;
}): number {
  need('evaporableWaterMm', 'wiltingPointShare', wiltingPointShare, { atLeast: 0 });
  need('evaporableWaterMm', 'fieldCapacityShare', fieldCapacityShare, { above: wiltingPointShare, atMost: 0.6 });
  need('evaporableWaterMm', 'layerDepthM', layerDepthM, { atLeast: 0.1, atMost: 0.15 });
  need('evaporableWaterMm', 'mulchShare', mulchShare, { atLeast: 0, atMost: 1 });
  return 1000 * (fieldCapacityShare - 0.5 * wiltingPointShare) * layerDepthM * (1 - 0.5 * mulchShare);
}
