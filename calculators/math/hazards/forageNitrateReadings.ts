import { type BandList, forageNitrate, type RationBand } from '../../tables/feedHazards.ts';
import { bandOf, type Reading } from './bandOf.ts';

/** A reading of nitrate in feed with the most that the ration may hold of it, null where the copy read did not reach that far. */
export interface RationReading extends Reading {
  readonly mostPercent: number | null;
}

const refused = 3;
/** Its place by share; one that was not seen comes after the whole ration. */
const placeOf = ({ mostPercent }: RationReading): number => (mostPercent === null ? 101 : mostPercent);

/**
 * What every list says of nitrate in feed, the strictest first: by severity, then by the smaller share of the ration; a share that was not seen comes last.
 * A list that allows these animals none of it counts as “do not feed”.
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
      const most = isPregnant ? mostPregnantPercent : mostPercent;
      return { list, source, seen, printed, severity: most === 0 ? refused : severity, mostPercent: most };
    })
    .sort((one, other) => other.severity - one.severity || placeOf(one) - placeOf(other));
}

/**
 * Most of the ration that any list allows these animals of this feed: the smallest share that one names.
 * @param nitrogenPpm - Nitrate nitrogen in dry matter, ppm, from `nitrateNitrogenPpm`; 0 or more
 * @param isPregnant - Whether any of the animals is pregnant
 * @returns Share of the ration's dry matter, percent; 100 where no list names a smaller one
 * @throws RangeError if the amount is negative
 * @source our own, the strictest leads
 * @example leastSharePercent(1600, true) //=> 25
 */
export function leastSharePercent(nitrogenPpm: number, isPregnant: boolean): number {
  const shares = forageNitrateReadings(nitrogenPpm, isPregnant).map(({ mostPercent }) => mostPercent);
  return Math.min(100, ...shares.filter((share) => share !== null));
}
