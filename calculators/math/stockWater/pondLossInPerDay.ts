import { need } from '../need.ts';
import { gallonsToInchAcres } from '../water/waterVolume.ts';

/**
 * Evaporation and seepage together, from a stake: e = (z − G / (27,154 A)) / t, with z = `dropIn`, G = `drunkGal`, A = `surfaceAc`, t = `days`.
 * @param options.dropIn - Fall of the water on the stake, inches; at least what was drunk
 * @param options.days - Days between the readings, without rain or inflow, days; above 0
 * @param options.drunkGal - Water drunk or pumped from the pond in that time, US gallons; 0 or more
 * @param options.surfaceAc - Water surface, mean of the two readings, acres; above 0
 * @returns Loss, inches a day
 * @throws RangeError if a value is outside its range, or stock drank more than the water fell
 * @source common practice
 * @example pondLossInPerDay({ dropIn: 3, days: 7, drunkGal: 12000, surfaceAc: 0.5 }) //=> 0.302
 */
export function pondLossInPerDay({
  dropIn,
  days,
  drunkGal,
  surfaceAc,
}: {
  readonly dropIn: number;
  readonly days: number;
  readonly drunkGal: number;
  readonly surfaceAc: number;
}): number {
  need('pondLossInPerDay', 'surfaceAc', surfaceAc, { above: 0 });
  const drunkIn = gallonsToInchAcres(drunkGal) / surfaceAc;
  need('pondLossInPerDay', 'dropIn', dropIn, { atLeast: drunkIn });
  need('pondLossInPerDay', 'days', days, { above: 0 });
  return (dropIn - drunkIn) / days;
}
