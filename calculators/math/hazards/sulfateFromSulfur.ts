import { need } from '../need.ts';

// Standard atomic weights, abridged (IUPAC 2021).
const sulfatePerSulfur = (32.06 + 4 * 15.999) / 32.06;

/**
 * Sulfate from a slip that counts its sulfur: SO4 = 2.996 S, with S = `sulfurMgPerL`.
 * @param sulfurMgPerL - Sulfate counted as sulfur (SO4-S), mg/L; 0 or more
 * @returns Sulfate (SO4), mg/L
 * @throws RangeError if the amount is negative
 * @source virginia-spes-201, Table 1
 * @example sulfateFromSulfur(100) //=> 299.6
 */
export function sulfateFromSulfur(sulfurMgPerL: number): number {
  need('sulfateFromSulfur', 'sulfurMgPerL', sulfurMgPerL, { atLeast: 0 });
  return sulfurMgPerL * sulfatePerSulfur;
}

/**
 * Salts in water from a conductivity meter, roughly: TDS = 640 EC, with EC = `conductivityMsPerCm`. Waters differ; a laboratory weighs the salts.
 * @param conductivityMsPerCm - Electrical conductivity, mS/cm (the same as dS/m or mmho/cm); 0 or more
 * @returns Total dissolved solids, mg/L
 * @throws RangeError if the conductivity is negative
 * @source servitech-water, factors for reports
 * @example saltsFromConductivity(5) //=> 3200
 */
export function saltsFromConductivity(conductivityMsPerCm: number): number {
  need('saltsFromConductivity', 'conductivityMsPerCm', conductivityMsPerCm, { atLeast: 0 });
  return 640 * conductivityMsPerCm;
}
