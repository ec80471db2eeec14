import { need } from '../need.ts';

/**
 * Water that roots can take from a full soil: TAW = 1000 (θFC − θWP) Zr, with θFC = `fieldCapacityShare`, θWP = `wiltingPointShare`, Zr =
 * `rootDepthM`.
 * @param options.fieldCapacityShare - Water at field capacity, share of the soil's volume; above `wiltingPointShare`, at most 0.6
 * @param options.wiltingPointShare - Water at the wilting point, share of the soil's volume; at least 0
 * @param options.rootDepthM - Depth of the roots, meters; above 0, at most 10
 * @returns Total available water in the root zone, millimeters
 * @throws RangeError if a parameter is outside its range
 * @source allen-1998, eq. 82
 * @example totalAvailableWaterMm({ fieldCapacityShare: 0.32, wiltingPointShare: 0.12, rootDepthM: 0.8 }) //=> 160
 */
export function totalAvailableWaterMm({
  fieldCapacityShare,
  wiltingPointShare,
  rootDepthM,
}: {
  readonly fieldCapacityShare: number;
  readonly wiltingPointShare: number;
  readonly rootDepthM: number;
}): number {
  need('totalAvailableWaterMm', 'wiltingPointShare', wiltingPointShare, { atLeast: 0 });
  need('totalAvailableWaterMm', 'fieldCapacityShare', fieldCapacityShare, { above: wiltingPointShare, atMost: 0.6 });
  need('totalAvailableWaterMm', 'rootDepthM', rootDepthM, { above: 0, atMost: 10 });
  return 1000 * (fieldCapacityShare - wiltingPointShare) * rootDepthM;
}
