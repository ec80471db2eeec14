import type { Place } from '../model/place.ts';
import { monthDay, type OfferPart, offerMap, told, typedUnder, word } from './offered.ts';

/** Rain in a usual year by class, where only the inches are told: dry ends under 25, wet begins over 40. */
const rainClassOf = ({ rainClass, yearRainIn }: Place): 'dry' | 'middle' | 'wet' | undefined => {
  if (rainClass !== undefined || yearRainIn === undefined) return rainClass;
  if (yearRainIn < 25) return 'dry';
  return yearRainIn > 40 ? 'wet' : 'middle';
};
/** Forms that only tell dry range from the rest. */
export const rainWords = (rainClass: 'dry' | 'middle' | 'wet'): readonly [string, ...string[]] =>
  rainClass === 'dry' ? ['dry'] : [rainClass, 'humid'];
/** Latitudes for which forms have a line, and how far from one a place may lie. */
const latitudes = [25, 30, 35, 40, 45, 50, 55];
const nearestLatitude = (latitudeDeg: number): string | undefined => {
  const near = latitudes.find((each) => Math.abs(each - latitudeDeg) <= 2.5);
  return near === undefined ? undefined : `north-${near}`;
};

/** Past about this many days in one pasture stock go back to the new leaf, and forms count the stay as one until it is gone (common practice). */
const longestStayDays = 7;

/** Its rain and heat, the days of its year, how it grows and is grazed. */
export const part: OfferPart = ({ place }) => {
  const { season, growth, grazing, stationMonthsIn } = place;
  const rainClass = rainClassOf(place);
  const single = offerMap(
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
  return { single };
};
