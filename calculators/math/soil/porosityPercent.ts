import { need } from '../need.ts';
import { particleDensityGPerCm3 } from './waterRetention.ts';

/**
 * Pores of a soil: n = 100 (1 − ρ/2.65), with ρ = `densityGPerCm3`.
 * @param densityGPerCm3 - Bulk density, g/cm3; above 0, below 2.65
 * @returns Pores, percent of the volume
 * @throws RangeError if `densityGPerCm3` is outside its range
 * @source common practice
 * @example porosityPercent(1.35) //=> 49
 */
export function porosityPercent(densityGPerCm3: number): number {
  need('porosityPercent', 'densityGPerCm3', densityGPerCm3, { above: 0, below: particleDensityGPerCm3 });
  return 100 * (1 - densityGPerCm3 / particleDensityGPerCm3);
}

/**
 * Water by volume from water by weight: θ = w ρ, with w = `gravimetricPercent`, ρ = `densityGPerCm3`, water at 1 g/cm3.
 * @param gravimetricPercent - Water, percent of the dry weight; 0 or more
 * @param densityGPerCm3 - Bulk density, g/cm3; above 0, below 2.65
 * @returns Water, percent of the volume
 * @throws RangeError if a parameter is outside its range
 * @source common practice
 * @example volumetricWaterPercent(20, 1.2) //=> 24
 */
export function volumetricWaterPercent(gravimetricPercent: number, densityGPerCm3: number): number {
  need('volumetricWaterPercent', 'gravimetricPercent', gravimetricPercent, { atLeast: 0 });
  need('volumetricWaterPercent', 'densityGPerCm3', densityGPerCm3, { above: 0, below: particleDensityGPerCm3 });
  return gravimetricPercent * densityGPerCm3;
}

/**
 * Share of the pores that hold water: 100 w ρ/n, with w = `gravimetricPercent`, ρ = `densityGPerCm3`, n the porosity in percent. More than 100 says that a
 * weight or a volume was misread, or that the soil swelled; it is returned as it is.
 * @param gravimetricPercent - Water, percent of the dry weight; 0 or more
 * @param densityGPerCm3 - Bulk density, g/cm3; above 0, below 2.65
 * @returns Water-filled pores, percent of the pores
 * @throws RangeError if a parameter is outside its range
 * @source common practice
 * @example waterFilledPorePercent(35.135, 0.984) //=> 55
 */
export function waterFilledPorePercent(gravimetricPercent: number, densityGPerCm3: number): number {
  return (100 * volumetricWaterPercent(gravimetricPercent, densityGPerCm3)) / porosityPercent(densityGPerCm3);
}
