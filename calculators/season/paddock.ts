import { need } from '../math/need.ts';
import { waterRetention } from '../math/soil/waterRetention.ts';
import { evaporableWaterMm } from '../math/soilWater/evaporableWaterMm.ts';
import { totalAvailableWaterMm } from '../math/soilWater/totalAvailableWaterMm.ts';
import type { Paddock } from './side.ts';

const metersPerIn = 0.0254;
const topFootIn = 12;
/** A root zone of next to nothing keeps the divisions whole; nothing can be drawn from it. */
const leastAvailableMm = 1e-6;

/** A soil as the season needs it. */
export interface PaddockSoil {
  readonly sandPercent: number;
  readonly clayPercent: number;
  readonly organicMatterPercent: number;
  /** Depth that roots use. */
  readonly rootsIn: number;
  readonly readilyEvaporableMm: number;
}

type Water = 'availableMm' | 'topAvailableMm' | 'evaporableMm' | 'readilyEvaporableMm';

/** A paddock on its soil: what the soil holds, by texture and organic matter. */
export function paddockOn(soil: PaddockSoil, paddock: Omit<Paddock, Water>): Paddock {
  need('paddockOn', 'rootsIn', soil.rootsIn, { atLeast: 0 });
  const { fieldCapacityInPerIn: fieldCapacityShare, wiltingPointInPerIn: wiltingPointShare } = waterRetention(soil);
  const availableIn = (depthIn: number): number =>
    depthIn === 0 ? 0 : totalAvailableWaterMm({ fieldCapacityShare, wiltingPointShare, rootDepthM: depthIn * metersPerIn });
  return {
    ...paddock,
    availableMm: Math.max(leastAvailableMm, availableIn(soil.rootsIn)),
    topAvailableMm: Math.max(leastAvailableMm, availableIn(Math.min(topFootIn, soil.rootsIn))),
    evaporableMm: evaporableWaterMm({ fieldCapacityShare, wiltingPointShare }),
    readilyEvaporableMm: soil.readilyEvaporableMm,
  };
}
