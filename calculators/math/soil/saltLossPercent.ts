import { availableWaterLostToSalt } from '../../tables/availableWater.ts';
import { need } from '../need.ts';
import { interpolated } from '../special/interpolated.ts';

/**
 * Part of the available water that salt keeps from plants, by the guide's table, straight between its rows. Another sheet of the same agency sees no large
 * effect below 8 dS/m, where this one already takes a fifth.
 * @param conductivityDsPerM - Conductivity of the saturation extract, dS/m (mmho/cm); 0 to 35
 * @returns Loss, percent of the available water
 * @throws RangeError if `conductivityDsPerM` is outside its range
 * @source nrcs-mo6-2002, reduction for soluble salts
 * @example saltLossPercent(10) //=> 25
 */
export function saltLossPercent(conductivityDsPerM: number): number {
  need('saltLossPercent', 'conductivityDsPerM', conductivityDsPerM, { atLeast: 0, atMost: 35 });
  return interpolated(conductivityDsPerM, availableWaterLostToSalt.conductivityDsPerM, availableWaterLostToSalt.lostPercent);
}
