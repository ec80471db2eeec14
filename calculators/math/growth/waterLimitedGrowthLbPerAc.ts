import { need } from '../need.ts';

/**
 * Forage that a depth of water can grow: G = w W, with w = `efficiencyLbPerAcIn`, W = `waterUsedIn`. Match the two: efficiency by all water used
 * goes with evapotranspiration, by water that plants used with transpiration.
 * @param waterUsedIn - Water used, inches; at least 0
 * @param efficiencyLbPerAcIn - Dry matter for an inch of that water, pounds per acre; at least 0
 * @returns Growth, pounds of dry matter per acre
 * @throws RangeError if a parameter is negative
 * @source volesky-g2012, water-use efficiency of forages
 * @example waterLimitedGrowthLbPerAc(6, 333.3) //=> 2000
 */
export function waterLimitedGrowthLbPerAc(waterUsedIn: number, efficiencyLbPerAcIn: number): number {
  need('waterLimitedGrowthLbPerAc', 'waterUsedIn', waterUsedIn, { atLeast: 0 });
  need('waterLimitedGrowthLbPerAc', 'efficiencyLbPerAcIn', efficiencyLbPerAcIn, { atLeast: 0 });
  return waterUsedIn * efficiencyLbPerAcIn;
}
