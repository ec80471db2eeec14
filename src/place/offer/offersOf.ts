import type { Pasture } from '../model/pasture.ts';
import type { Place } from '../model/place.ts';
import { hayBesides, hayOffers, priceOffers, toolOffers, waterOffers } from './goodsOffers.ts';
import { layerRows, pastureOffers, pastureRows, pasturesOffers } from './groundOffers.ts';
import { herdOffers, herdRows } from './herdOffers.ts';
import { monthDay, type OfferMap, type Offers, offerMap, told, typedUnder, word } from './offered.ts';
import type { RecordOffers } from './recordOffers.ts';
import { rainWords } from './words.ts';

/** What was chosen on the page. */
export interface Chosen {
  readonly pastureIds?: readonly string[];
  readonly waterId?: string;
  /** What its record says, where there is one and a form asks for it. */
  readonly record?: RecordOffers | undefined;
}

/** Rain in a usual year by class, where only the inches are told: dry ends under 25, wet begins over 40. */
const rainClassOf = ({ rainClass, yearRainIn }: Place): 'dry' | 'middle' | 'wet' | undefined => {
  if (rainClass !== undefined || yearRainIn === undefined) return rainClass;
  if (yearRainIn < 25) return 'dry';
  return yearRainIn > 40 ? 'wet' : 'middle';
};
/** Latitudes for which forms have a line, and how far from one a place may lie. */
const latitudes = [25, 30, 35, 40, 45, 50, 55];
const nearestLatitude = (latitudeDeg: number): string | undefined => {
  const near = latitudes.find((each) => Math.abs(each - latitudeDeg) <= 2.5);
  return near === undefined ? undefined : `north-${near}`;
};

/** Past about this many days in one pasture stock go back to the new leaf, and forms count the stay as one until it is gone (common practice). */
const longestStayDays = 7;

function placeOffers(place: Place): OfferMap {
  const { season, growth, grazing, stationMonthsIn } = place;
  const rainClass = rainClassOf(place);
  return offerMap(
    word('place.rainClass', rainClass && rainWords(rainClass)),
    told('place.yearRain', place, 'yearRainIn'),
    told('place.rainFactor', place, 'rainFactor'),
    word('place.rainFrom', place.rainFactor !== undefined ? 'known' : place.yearRainIn === undefined ? undefined : 'year-rain'),
    told('place.hot', place, 'hotF'),
    word('place.latitude', place.latitudeDeg === undefined ? undefined : nearestLatitude(place.latitudeDeg)),
    monthDay('season.turnIn', season?.turnInDay),
    monthDay('season.end', season?.endDay),
    monthDay('season.hayFrom', season?.hayFromDay),
    monthDay('season.frost', season?.frostDay),
    word('growth.curve', growth?.curve),
    word('growth.start', growth?.startMonth),
    word('growth.best', growth?.bestMonth),
    word('growth.quit', growth?.quitMonth),
    word('growth.fall', growth?.fallFlush),
    told('grazing.stay', grazing, 'stayDays', { typed: typedUnder(place.typed, 'grazing.') }),
    told('grazing.herds', grazing, 'herdCount', { typed: typedUnder(place.typed, 'grazing.') }),
    word('grazing.eaten', grazing?.stayDays === undefined ? undefined : grazing.stayDays <= longestStayDays ? 'week' : 'until-gone'),
    stationMonthsIn === undefined ? [] : [['rain.station', { months: stationMonthsIn }]],
    stationMonthsIn === undefined ? [] : word('rain.from', ['station', 'medians']),
  );
}

const ofHeights = (key: string): boolean => key.startsWith('record.');
/** Two heights are those of the pasture that was chosen, if any was; else the latest that were read. */
const recordSingle = ({ single, ofPasture }: RecordOffers, chosen: Pasture | undefined): OfferMap =>
  chosen === undefined ? single : new Map([...[...single].filter(([key]) => !ofHeights(key)), ...(ofPasture.get(chosen.id) ?? [])]);

const isGrazed = ({ isCounted, use }: Pasture): boolean => isCounted && (use === undefined || use === 'grazed');

/**
 * All that a place can put into forms on a day. Of one pasture where one is chosen, or where there is but one; of the chosen ones together, else of all
 * that are grazed. What it does not know it does not offer.
 */
export function offersOf(place: Place, todayDay: number, { pastureIds = [], waterId, record }: Chosen = {}): Offers {
  const chosen = place.pastures.filter(({ id }) => pastureIds.includes(id));
  const several = chosen.length > 0 ? chosen : place.pastures.filter(isGrazed);
  const [one, second] = several;
  const pasture = second === undefined ? one : undefined;
  const water = waterId === undefined && place.water.length === 1 ? place.water[0] : place.water.find(({ id }) => id === waterId);
  return {
    single: new Map([
      ...placeOffers(place),
      ...herdOffers(place, todayDay),
      ...hayOffers(place),
      ...priceOffers(place),
      ...toolOffers(place),
      ...pasturesOffers(several, chosen.length > 0),
      ...(pasture ? pastureOffers(place, pasture) : []),
      ...(water ? waterOffers(water) : []),
      ...(record ? recordSingle(record, chosen.length === 1 ? pasture : undefined) : []),
    ]),
    tables: {
      herd: herdRows(place, todayDay),
      pastures: pastureRows(place, several, record),
      ...(pasture ? { layers: layerRows(place, pasture) } : {}),
    },
    besides: hayBesides(place),
  };
}
