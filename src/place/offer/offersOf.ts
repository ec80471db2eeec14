import type { Pasture } from '../model/pasture.ts';
import type { Place } from '../model/place.ts';
import { type OfferMap, type OfferPart, type Offers, offerMap, type RecordOffers, type Standing } from './offered.ts';

/** What was chosen on the page. */
export interface Chosen extends Partial<Pick<Standing, 'record' | 'earlier' | 'visit'>> {
  /** Pastures, and which of several waters. */
  readonly ids?: readonly string[];
}

const ofHeights = (key: string): boolean => key.startsWith('record.');
/** Two heights are those of the pasture that was chosen, if any was; else the latest that were read. */
const recordSingle = ({ single, ofPasture }: RecordOffers, chosen: Pasture | undefined): OfferMap =>
  chosen === undefined ? single : new Map([...[...single].filter(([key]) => !ofHeights(key)), ...(ofPasture.get(chosen.id) ?? [])]);

const isGrazed = ({ isCounted, use }: Pasture): boolean => isCounted && (use === undefined || use === 'grazed');

/**
 * What a place can put into forms on a day, by the parts that a form asks for. Of one pasture where one is chosen, or where there is but one; of the
 * chosen ones together, else of all that are grazed. What it does not know it does not offer.
 */
export function offersOf(parts: readonly OfferPart[], place: Place, todayDay: number, { ids = [], record, earlier, visit }: Chosen = {}): Offers {
  const chosen = place.pastures.filter(({ id }) => ids.includes(id));
  const pastures = chosen.length > 0 ? chosen : place.pastures.filter(isGrazed);
  const [one, second] = pastures;
  const pasture = second === undefined ? one : undefined;
  const water = place.water.length === 1 ? place.water[0] : place.water.find(({ id }) => ids.includes(id));
  const told = parts.map((part) => part({ place, todayDay, pastures, isChosen: chosen.length > 0, pasture, water, record, earlier, visit }));
  return {
    // What the record says goes before what the place says in general.
    single: offerMap(
      ...told.map(({ single = [] }) => [...single]),
      record ? [...recordSingle(record, chosen.length === 1 ? pasture : undefined)] : [],
    ),
    tables: Object.assign({}, ...told.map(({ tables }) => tables)),
    besides: told.flatMap(({ besides = [] }) => besides),
  };
}
