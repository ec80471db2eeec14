import { need } from '../need.ts';
import { gallonsPerCubicFoot } from '../water/waterVolume.ts';

/**
 * Water standing in a well: V = 0.0408 d² h, with d = `casingIn`, h = `waterFt`; the factor is 7.4805 π / 4 / 144.
 * @param casingIn - Inside diameter of the casing, inches; above 0
 * @param waterFt - Water above the pump, feet; 0 or more
 * @returns Water, US gallons
 * @throws RangeError if a value is outside its range
 * @source gw-project-domestic-wells-2022, box 1
 * @example wellStorageGal(6, 100) //=> 146.9
 */
export function wellStorageGal(casingIn: number, waterFt: number): number {
  need('wellStorageGal', 'casingIn', casingIn, { above: 0 });
  need('wellStorageGal', 'waterFt', waterFt, { atLeast: 0 });
  return (Math.PI / 4) * (casingIn / 12) ** 2 * waterFt * gallonsPerCubicFoot;
}

/**
 * What a well itself yields, from a pumping test: q = (V − 0.0408 d² s) / t. Of the water pumped, V = `pumpedGal` in t = `minutes`, the part by which the
 * level fell, s = `drawdownFt`, only came out of the casing, d = `casingIn`.
 * @param options.pumpedGal - Water pumped, by bucket or meter, US gallons; at least what the casing held
 * @param options.minutes - Time of pumping, minutes; above 0. An hour at least
 * @param options.casingIn - Inside diameter of the casing, inches; above 0
 * @param options.drawdownFt - Fall of the water level in that time, feet; 0 or more
 * @returns Yield, US gallons a minute
 * @throws RangeError if a value is outside its range, or the casing alone held more than was pumped
 * @source common practice
 * @example wellYieldGpm({ pumpedGal: 360, minutes: 60, casingIn: 6, drawdownFt: 40 }) //=> 5.02
 */
export function wellYieldGpm({
  pumpedGal,
  minutes,
  casingIn,
  drawdownFt,
}: {
  readonly pumpedGal: number;
  readonly minutes: number;
  readonly casingIn: number;
  readonly drawdownFt: number;
}): number {
  need('wellYieldGpm', 'minutes', minutes, { above: 0 });
  const fromCasingGal = wellStorageGal(casingIn, drawdownFt);
  need('wellYieldGpm', 'pumpedGal', pumpedGal, { atLeast: fromCasingGal });
  return (pumpedGal - fromCasingGal) / minutes;
}

/**
 * What a well gives for each foot that its level falls: c = q / s, with q = `flowGpm`, s = `drawdownFt`. Falling over the years, it says that the well clogs or the water table sinks.
 * @param flowGpm - Steady pumping, US gallons a minute; above 0
 * @param drawdownFt - Fall of the water level once it holds, feet; above 0
 * @returns Specific capacity, US gallons a minute for each foot
 * @throws RangeError if a value is outside its range
 * @source se-hydrogeology-specific-capacity, equation
 * @example specificCapacityGpmPerFt(200, 40) //=> 5
 */
export function specificCapacityGpmPerFt(flowGpm: number, drawdownFt: number): number {
  need('specificCapacityGpmPerFt', 'flowGpm', flowGpm, { above: 0 });
  need('specificCapacityGpmPerFt', 'drawdownFt', drawdownFt, { above: 0 });
  return flowGpm / drawdownFt;
}

/**
 * Fall of the level at another pumping rate: s = q / c, with q = `flowGpm`, c = `gpmPerFt`. Good near the tested rate; at a higher one the level falls more.
 * @param flowGpm - Pumping wanted, US gallons a minute; 0 or more
 * @param gpmPerFt - Specific capacity, US gallons a minute for each foot; above 0
 * @returns Drawdown, feet
 * @throws RangeError if a value is outside its range
 * @source metaglossary-specific-capacity, example
 * @example drawdownFt(30, 0.5) //=> 60
 */
export function drawdownFt(flowGpm: number, gpmPerFt: number): number {
  need('drawdownFt', 'flowGpm', flowGpm, { atLeast: 0 });
  need('drawdownFt', 'gpmPerFt', gpmPerFt, { above: 0 });
  return flowGpm / gpmPerFt;
}
