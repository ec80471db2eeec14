import type { SoilGroup } from '../../tables/curveNumbers.ts';
import { conductivityLimits } from '../../tables/soilGroups.ts';
import { need } from '../need.ts';

/** The group as the ground lies; and where high water alone makes it D, the group that it would have if drained. */
export interface ConductivityGroup {
  readonly group: SoilGroup;
  readonly drainedGroup: SoilGroup | null;
}

const needDepth = (name: string, parameter: string, depthCm: number): void => {
  if (depthCm !== Infinity) need(name, parameter, depthCm, { atLeast: 0 });
};

/**
 * Depth down to which the layers are searched for the least conductivity: 60 or 50 cm where a barrier lies at 50 to 100 cm (with water above or below
 * 60 cm), 50 cm where water lies at 60 to 100 cm, else 100 cm; with `barrierDepthCm` and `waterTableDepthCm`.
 * @param barrierDepthCm - Depth to rock, hardpan or another layer that holds water up, cm; 0 or more, or Infinity
 * @param waterTableDepthCm - Depth to the high water table, cm; 0 or more, or Infinity
 * @returns Depth of the search from the surface, cm; 0 where the depth alone decides
 * @throws RangeError if a depth is negative
 * @source nrcs-neh630-07-2009, table 7-1
 * @example searchedDepthCm(80, 30) //=> 60
 */
export function searchedDepthCm(barrierDepthCm: number, waterTableDepthCm: number): number {
  needDepth('searchedDepthCm', 'barrierDepthCm', barrierDepthCm);
  needDepth('searchedDepthCm', 'waterTableDepthCm', waterTableDepthCm);
  if (barrierDepthCm < 50) return 0;
  if (barrierDepthCm <= 100) return waterTableDepthCm < 60 ? 60 : 50;
  return waterTableDepthCm >= 60 && waterTableDepthCm <= 100 ? 50 : 100;
}

/**
 * Hydrologic soil group by the rule of 2009, from the least conductivity K = `leastConductivityUmPerS` within `searchedDepthCm`, and two depths.
 * Barrier shallower than 50 cm: D. Barrier at 50 to 100 cm, or water at 60 to 100 cm: K up to 1 D, 10 C, 40 B, above A. Otherwise: up to 0.4 D,
 * 4 C, 10 B, above A. Water above 60 cm: D, with the group of the table for the case that it is drained.
 * @param options.leastConductivityUmPerS - Saturated conductivity of the tightest layer, µm per second; 0 or more
 * @param options.barrierDepthCm - Depth to rock, hardpan or another layer that holds water up, cm; 0 or more, or Infinity
 * @param options.waterTableDepthCm - Depth to the high water table, cm; 0 or more, or Infinity
 * @returns Group as the ground lies, and the drained group where the water table alone makes it D (else null)
 * @throws RangeError if a number is negative
 * @source nrcs-neh630-07-2009, table 7-1
 * @example soilGroupFromConductivity({ leastConductivityUmPerS: 3, barrierDepthCm: 150, waterTableDepthCm: Infinity }) //=> { group: 'c', drainedGroup: null }
 */
export function soilGroupFromConductivity({
  leastConductivityUmPerS,
  barrierDepthCm,
  waterTableDepthCm,
}: {
  leastConductivityUmPerS: number;
  barrierDepthCm: number;
  waterTableDepthCm: number;
}): ConductivityGroup {
  need('soilGroupFromConductivity', 'leastConductivityUmPerS', leastConductivityUmPerS, { atLeast: 0 });
  needDepth('soilGroupFromConductivity', 'barrierDepthCm', barrierDepthCm);
  needDepth('soilGroupFromConductivity', 'waterTableDepthCm', waterTableDepthCm);
  if (barrierDepthCm < 50) return { group: 'd', drainedGroup: null };
  const shallow = barrierDepthCm <= 100 || (waterTableDepthCm >= 60 && waterTableDepthCm <= 100);
  const limits = shallow ? conductivityLimits.shallowUmPerS : conductivityLimits.deepUmPerS;
  const byConductivity =
    leastConductivityUmPerS <= limits.d ? 'd' : leastConductivityUmPerS <= limits.c ? 'c' : leastConductivityUmPerS <= limits.b ? 'b' : 'a';
  if (waterTableDepthCm >= 60) return { group: byConductivity, drainedGroup: null };
  return { group: 'd', drainedGroup: byConductivity === 'd' ? null : byConductivity };
}
