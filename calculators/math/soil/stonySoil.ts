import { need } from '../need.ts';
import { particleDensityGPerCm3 } from './waterRetention.ts';

/**
 * What stones larger than 2 mm do to a soil: R_v = a R_w/(1 − R_w(1 − a)) of its volume, density ρ(1 − R_v) + 2.65 R_v, available water times 1 − R_v,
 * conductivity times (1 − R_w)/(1 − R_w(1 − 3a/2)), with R_w = `stoneWeightPercent` / 100, ρ = `fineDensityGPerCm3`, a = ρ/2.65.
 * @param stoneWeightPercent - Stones, percent of the whole soil by weight; 0 to below 100
 * @param fineDensityGPerCm3 - Bulk density of the fine earth between the stones, g/cm3; above 0, below 2.65
 * @returns Stones, percent by volume; density of the whole, g/cm3; shares of the fine earth's available water and conductivity that are left
 * @throws RangeError if a parameter is outside its range
 * @source saxton-rawls-2006, eq. 19 to 22
 * @example stonySoil(20, 1.432).stoneVolumePercent //=> 11.90
 */
export function stonySoil(
  stoneWeightPercent: number,
  fineDensityGPerCm3: number,
): { readonly stoneVolumePercent: number; readonly densityGPerCm3: number; readonly availableShare: number; readonly conductivityShare: number } {
  need('stonySoil', 'stoneWeightPercent', stoneWeightPercent, { atLeast: 0, below: 100 });
  need('stonySoil', 'fineDensityGPerCm3', fineDensityGPerCm3, { above: 0, below: particleDensityGPerCm3 });
  const byWeight = stoneWeightPercent / 100;
  const ratio = fineDensityGPerCm3 / particleDensityGPerCm3;
  const byVolume = (ratio * byWeight) / (1 - byWeight * (1 - ratio));
  return {
    stoneVolumePercent: 100 * byVolume,
    densityGPerCm3: fineDensityGPerCm3 * (1 - byVolume) + particleDensityGPerCm3 * byVolume,
    availableShare: 1 - byVolume,
    conductivityShare: (1 - byWeight) / (1 - byWeight * (1 - 1.5 * ratio)),
  };
}
