import { need } from '../need.ts';

/**
 * Net energy for maintenance in a feed: 1.37 M - 0.138 M^2 + 0.0105 M^3 - 1.12, with M = 0.82 x 0.04409 `tdnPercent` its metabolizable energy.
 * @param tdnPercent - Total digestible nutrients, percent of dry matter; 35 to 95
 * @returns Net energy for maintenance, Mcal per kg of dry matter
 * @throws RangeError if `tdnPercent` is outside its range
 * @source from memory, NRC 1996
 * @example maintenanceEnergyMcalPerKg(55) //=> 1.141
 */
export function maintenanceEnergyMcalPerKg(tdnPercent: number): number {
  need('maintenanceEnergyMcalPerKg', 'tdnPercent', tdnPercent, { atLeast: 35, atMost: 95 });
  const metabolizable = 0.82 * 0.04409 * tdnPercent;
  return 1.37 * metabolizable - 0.138 * metabolizable ** 2 + 0.0105 * metabolizable ** 3 - 1.12;
}
