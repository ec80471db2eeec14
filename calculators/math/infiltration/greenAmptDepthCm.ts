import { need } from '../need.ts';

/**
 * A soil as the Green-Ampt equation sees it: conductivity behind the wetting front, suction at the front (plus the standing depth, where water stands
 * deep on the ground), and the share of the volume that the water can still fill.
 */
export interface WettingSoil {
  readonly conductivityCmPerHr: number;
  readonly suctionCm: number;
  readonly moistureDeficit: number;
}

const needSoil = (name: string, { conductivityCmPerHr, suctionCm, moistureDeficit }: WettingSoil): void => {
  need(name, 'conductivityCmPerHr', conductivityCmPerHr, { above: 0 });
  need(name, 'suctionCm', suctionCm, { atLeast: 0 });
  need(name, 'moistureDeficit', moistureDeficit, { atLeast: 0, atMost: 1 });
};

/** F − G ln(1 + F / G): conductivity times the time that soaking in to F takes, under water all the while. */
const soaked = (depthCm: number, pullCm: number): number => {
  const ratio = depthCm / pullCm;
  // Where the pull is nothing beside the depth, the ratio overflows and the term with it is nothing.
  if (!Number.isFinite(ratio)) return depthCm;
  // The two terms all but cancel in the first moments, so their series takes over.
  if (ratio < 1e-4) return depthCm * ratio * (1 / 2 - ratio * (1 / 3 - ratio * (1 / 4 - ratio / 5)));
  return depthCm - pullCm * Math.log1p(ratio);
};

/**
 * Room that water finds: Δθ = (1 − se) θe, with θe = `effectivePorosity`, se = `effectiveSaturation`.
 * @param effectivePorosity - Share of the volume that drains and fills, no unit; above 0, below 1
 * @param effectiveSaturation - Share of that which is full already, no unit; 0 to 1
 * @returns Moisture deficit, share of the volume
 * @throws RangeError if a parameter is outside its range
 * @source rawls-1983, eq. 2
 * @example moistureDeficit(0.486, 0.3) //=> 0.340
 */
export function moistureDeficit(effectivePorosity: number, effectiveSaturation: number): number {
  need('moistureDeficit', 'effectivePorosity', effectivePorosity, { above: 0, below: 1 });
  need('moistureDeficit', 'effectiveSaturation', effectiveSaturation, { atLeast: 0, atMost: 1 });
  return (1 - effectiveSaturation) * effectivePorosity;
}

/**
 * Depth that has soaked in after a time under water: F − F0 − G ln((F + G) / (F0 + G)) = K t, with G = suction × deficit of `soil`, K its
 * conductivity, F0 = `startCm`, t = `hours`; solved by Newton's method to the last digits.
 * @param options.hours - Time under water, hours; 0 or more
 * @param options.soil - Conductivity in cm per hour (above 0), suction in cm (0 or more), moisture deficit (0 to 1)
 * @param options.startCm - Depth that had soaked in before, cm; 0 or more
 * @returns Depth soaked in altogether, cm
 * @throws RangeError if a parameter is outside its range
 * @source rawls-1983, eq. 1
 * @example greenAmptDepthCm({ hours: 1, soil: { conductivityCmPerHr: 0.65, suctionCm: 16.7, moistureDeficit: 0.34 }, startCm: 0 }) //=> 3.17
 */
export function greenAmptDepthCm({ hours, soil, startCm }: { hours: number; soil: WettingSoil; startCm: number }): number {
  need('greenAmptDepthCm', 'hours', hours, { atLeast: 0 });
  need('greenAmptDepthCm', 'startCm', startCm, { atLeast: 0 });
  needSoil('greenAmptDepthCm', soil);
  const pullCm = soil.suctionCm * soil.moistureDeficit;
  const goalCm = soil.conductivityCmPerHr * hours + soaked(startCm, pullCm);
  if (goalCm === 0) return startCm;
  // F − G ln(1 + F / G) is at least F² / (2 (F + G)), so this start lies at or above the root; the curve is convex, and Newton walks down to it.
  let depthCm = goalCm + Math.sqrt(goalCm ** 2 + 2 * goalCm * pullCm);
  for (let round = 0; round < 100; round += 1) {
    const nextCm = depthCm - ((soaked(depthCm, pullCm) - goalCm) * (depthCm + pullCm)) / depthCm;
    if (!(nextCm > 0 && nextCm < depthCm)) break;
    depthCm = nextCm;
  }
  return Math.max(depthCm, startCm);
}

/**
 * Time under water until a depth has soaked in: t = (F − F0 − G ln((F + G) / (F0 + G))) / K, with G = suction × deficit of `soil`, K its
 * conductivity, F = `depthCm`, F0 = `startCm`.
 * @param options.depthCm - Depth soaked in altogether, cm; at least `startCm`
 * @param options.soil - Conductivity in cm per hour (above 0), suction in cm (0 or more), moisture deficit (0 to 1)
 * @param options.startCm - Depth that had soaked in before, cm; 0 or more
 * @returns Time under water, hours
 * @throws RangeError if a parameter is outside its range
 * @source rawls-1983, eq. 1
 * @example greenAmptHours({ depthCm: 10.2, soil: { conductivityCmPerHr: 0.65, suctionCm: 19.5, moistureDeficit: 0.34 }, startCm: 0 }) //=> 6.19
 */
export function greenAmptHours({ depthCm, soil, startCm }: { depthCm: number; soil: WettingSoil; startCm: number }): number {
  need('greenAmptHours', 'startCm', startCm, { atLeast: 0 });
  need('greenAmptHours', 'depthCm', depthCm, { atLeast: startCm });
  needSoil('greenAmptHours', soil);
  const pullCm = soil.suctionCm * soil.moistureDeficit;
  return (soaked(depthCm, pullCm) - soaked(startCm, pullCm)) / soil.conductivityCmPerHr;
}

/**
 * Rate at which ground under water takes more: f = K (1 + G / F), with G = suction × deficit of `soil`, K its conductivity, F = `depthCm`.
 * @param depthCm - Depth soaked in so far, cm; above 0
 * @param soil - Conductivity in cm per hour (above 0), suction in cm (0 or more), moisture deficit (0 to 1)
 * @returns Infiltration capacity, cm per hour
 * @throws RangeError if a parameter is outside its range
 * @source rawls-1983, eq. 2
 * @example greenAmptRateCmPerHr(10.2, { conductivityCmPerHr: 0.65, suctionCm: 19.5, moistureDeficit: 0.34 }) //=> 1.0725
 */
export function greenAmptRateCmPerHr(depthCm: number, soil: WettingSoil): number {
  need('greenAmptRateCmPerHr', 'depthCm', depthCm, { above: 0 });
  needSoil('greenAmptRateCmPerHr', soil);
  return soil.conductivityCmPerHr * (1 + (soil.suctionCm * soil.moistureDeficit) / depthCm);
}
