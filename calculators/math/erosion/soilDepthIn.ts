import { need } from '../need.ts';
import { inchAcresToTons } from '../water/waterVolume.ts';

/**
 * Weight of an inch of soil on an acre: w = 113.3 ρ, with ρ = `densityGPerCm3`, since an inch of water weighs 113.3 tons.
 * @param densityGPerCm3 - Bulk density, g/cm3; above 0, below 2.65
 * @returns Tons an acre for each inch
 * @throws RangeError if `densityGPerCm3` is outside its range
 * @source common practice
 * @example tonsPerInchAcre(1.3) //=> 147.3
 */
export function tonsPerInchAcre(densityGPerCm3: number): number {
  need('tonsPerInchAcre', 'densityGPerCm3', densityGPerCm3, { above: 0, below: 2.65 });
  return inchAcresToTons(1) * densityGPerCm3;
}

/**
 * Depth of soil that a loss takes when it comes off evenly: d = A/(113.3 ρ), with A = `tonPerAc`, ρ = `densityGPerCm3`.
 * @param tonPerAc - Soil lost, tons an acre; 0 or more
 * @param densityGPerCm3 - Bulk density of the topsoil, g/cm3; above 0, below 2.65
 * @returns Depth, inches
 * @throws RangeError if a parameter is outside its range
 * @source common practice
 * @example soilDepthIn(1, 1.3) //=> 0.00679
 */
export function soilDepthIn(tonPerAc: number, densityGPerCm3: number): number {
  need('soilDepthIn', 'tonPerAc', tonPerAc, { atLeast: 0 });
  return tonPerAc / tonsPerInchAcre(densityGPerCm3);
}

/**
 * Years in which an inch goes at a yearly loss: t = 113.3 ρ/A, with A = `tonPerAcPerYear`, ρ = `densityGPerCm3`. What grows back meanwhile is not counted.
 * @param tonPerAcPerYear - Soil lost, tons an acre a year; 0 or more
 * @param densityGPerCm3 - Bulk density of the topsoil, g/cm3; above 0, below 2.65
 * @returns Years an inch; Infinity if nothing is lost
 * @throws RangeError if a parameter is outside its range
 * @source common practice
 * @example yearsPerInch(5, 1.3) //=> 29.5
 */
export function yearsPerInch(tonPerAcPerYear: number, densityGPerCm3: number): number {
  return 1 / soilDepthIn(tonPerAcPerYear, densityGPerCm3);
}
