import { type BandList, forageNitrate, type RationBand } from '../../tables/feedHazards.ts';
import { bandOf, type Reading } from './bandOf.ts';

/** A reading of nitrate in feed with the most that the ration may hold of it, null where the copy read did not reach that far. */
export interface RationReading extends Reading {
  readonly mostPercent: number | null;
}

/**
 * What every list says of nitrate in feed, the strictest first: by severity, then by the smaller share of the ration; a share that was not seen comes last.
 * @param nitrogenPpm - Nitrate nitrogen in dry matter, ppm, from `nitrateNitrogenPpm`; 0 or more
 * @param isPregnant - Whether any of the animals is pregnant
 * @returns A reading for each list, with the most of the ration's dry matter, percent
 * @throws RangeError if the amount is negative
 * @source our own, the strictest leads
 * @example forageNitrateReadings(1600, true)[0].list //=> 'servitech'
 */
export function forageNitrateReadings(nitrogenPpm: number, isPregnant: boolean): RationReading[] {
  const lists: readonly BandList<RationBand>[] = forageNitrate;
  return lists
    .map(({ list, source, seen, bands }) => {
      const { printed, severity, mostPercent, mostPregnantPercent } = bandOf(bands, nitrogenPpm);
      return { list, source, seen, printed, severity, mostPercent: isPregnant ? mostPregnantPercent : mostPercent };
    })
    .sort((one, other) => other.severity - one.severity || (one.mostPercent ?? 101) - (other.mostPercent ?? 101));
}
