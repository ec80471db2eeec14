import { need } from '../need.ts';
import { particleDensityGPerCm3 } from './waterRetention.ts';

/**
 * Bulk density of a soil core: the whole is d/V; the fine earth, which roots and limits are about, is (d − s)/(V − v), with d = `dryG`, V = `volumeCm3`,
 * s = `stoneG`, v = `stoneVolumeCm3`. Stones make a core heavy without making the soil tight, so a stony core is judged by its fine earth.
 * @param options.dryG - Oven-dry weight of the whole core, g; above 0
 * @param options.volumeCm3 - Volume of the core, cm3; above 0
 * @param options.stoneG - Dry weight of the stones larger than 2 mm, g; 0 if left out; below `dryG`
 * @param options.stoneVolumeCm3 - Water that the stones push aside, cm3; `stoneG` / 2.65 if left out; below `volumeCm3`
 * @returns Density of whole and of fine earth, g/cm3; stones, percent of the volume
 * @throws RangeError if a parameter is outside its range
 * @source common practice
 * @example coreDensity({ dryG: 575, volumeCm3: 400 }).wholeGPerCm3 //=> 1.44
 */
export function coreDensity({
  dryG,
  volumeCm3,
  stoneG = 0,
  stoneVolumeCm3 = stoneG / particleDensityGPerCm3,
}: {
  readonly dryG: number;
  readonly volumeCm3: number;
  readonly stoneG?: number;
  readonly stoneVolumeCm3?: number;
}): { readonly wholeGPerCm3: number; readonly fineGPerCm3: number; readonly stoneVolumePercent: number } {
  need('coreDensity', 'dryG', dryG, { above: 0 });
  need('coreDensity', 'volumeCm3', volumeCm3, { above: 0 });
  need('coreDensity', 'stoneG', stoneG, { atLeast: 0, below: dryG });
  need('coreDensity', 'stoneVolumeCm3', stoneVolumeCm3, { atLeast: 0, below: volumeCm3 });
  return {
    wholeGPerCm3: dryG / volumeCm3,
    fineGPerCm3: (dryG - stoneG) / (volumeCm3 - stoneVolumeCm3),
    stoneVolumePercent: (100 * stoneVolumeCm3) / volumeCm3,
  };
}
