import { need } from '../need.ts';
import type { WettingSoil } from './greenAmptDepthCm.ts';

/**
 * Depth that has soaked in when steady rain begins to stand: Fp = K G / (i − K), with K the conductivity and G = suction × deficit of `soil`,
 * i = `rainCmPerHr`. Rain no faster than K never stands.
 * @param rainCmPerHr - Steady rain, cm per hour; 0 or more
 * @param soil - Conductivity in cm per hour (above 0), suction in cm (0 or more), moisture deficit (0 to 1)
 * @returns Depth soaked in at ponding, cm; Infinity if water never stands
 * @throws RangeError if a parameter is outside its range
 * @source mein-larson-1971, depth at surface saturation
 * @example pondingDepthCm(0.5, { conductivityCmPerHr: 0.044, suctionCm: 22.4, moistureDeficit: 0.25 }) //=> 0.54
 */
export function pondingDepthCm(rainCmPerHr: number, soil: WettingSoil): number {
  need('pondingDepthCm', 'rainCmPerHr', rainCmPerHr, { atLeast: 0 });
  need('pondingDepthCm', 'conductivityCmPerHr', soil.conductivityCmPerHr, { above: 0 });
  need('pondingDepthCm', 'suctionCm', soil.suctionCm, { atLeast: 0 });
  need('pondingDepthCm', 'moistureDeficit', soil.moistureDeficit, { atLeast: 0, atMost: 1 });
  if (rainCmPerHr <= soil.conductivityCmPerHr) return Infinity;
  return (soil.conductivityCmPerHr * soil.suctionCm * soil.moistureDeficit) / (rainCmPerHr - soil.conductivityCmPerHr);
}

/**
 * Time until steady rain on ground that nothing has soaked into yet begins to stand: tp = Fp / i = K G / (i (i − K)), with i = `rainCmPerHr`.
 * @param rainCmPerHr - Steady rain, cm per hour; 0 or more
 * @param soil - Conductivity in cm per hour (above 0), suction in cm (0 or more), moisture deficit (0 to 1)
 * @returns Time to ponding, hours; Infinity if water never stands
 * @throws RangeError if a parameter is outside its range
 * @source mein-larson-1971, time to surface saturation
 * @example pondingHours(0.5, { conductivityCmPerHr: 0.044, suctionCm: 22.4, moistureDeficit: 0.25 }) //=> 1.08
 */
export function pondingHours(rainCmPerHr: number, soil: WettingSoil): number {
  const depthCm = pondingDepthCm(rainCmPerHr, soil);
  return depthCm === Infinity ? Infinity : depthCm / rainCmPerHr;
}
