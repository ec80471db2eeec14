import { isoDay } from '../../../calculators/units/printQuantity.ts';
import type { Place } from '../model/place.ts';
import { day, type OfferPart, offerMap, told, word, yesNo } from './offered.ts';
import { rainSinceMonth } from './rainSince.ts';

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
const latitudes = { north: { deg: [25, 30, 35, 40, 45, 50, 55], within: 2.5 }, south: { deg: [25, 35, 45], within: 5 } } as const;
const nearestLatitude = (latitudeDeg: number): string | undefined => {
  const side = latitudeDeg < 0 ? 'south' : 'north';
  const { deg, within } = latitudes[side];
  const near = deg.find((each) => Math.abs(each - Math.abs(latitudeDeg)) <= within);
  return near === undefined ? undefined : `${side}-${near}`;
};

/** Its rain, heat and latitude. */
export const part: OfferPart = ({ place, todayDay }) => {
  const { rainFactor, yearRainIn, latitudeDeg, stationMonthsIn } = place;
  const rainClass = rainClassOf(place);
  const single = offerMap(
    word('place.rainClass', rainClass && rainWords(rainClass)),
    told('place.yearRain', place, 'yearRainIn'),
    told('place.rainFactor', place, 'rainFactor'),
    word('place.rainFrom', rainFactor !== undefined ? 'known' : yearRainIn === undefined ? undefined : 'year-rain'),
    told('place.hot', place, 'hotF'),
    word('place.latitude', latitudeDeg === undefined ? undefined : nearestLatitude(latitudeDeg)),
    latitudeDeg === undefined ? [] : yesNo('place.isSouth', latitudeDeg < 0),
    word('rain.since', rainSinceMonth(place)),
    stationMonthsIn === undefined ? [] : [['rain.station', { months: stationMonthsIn }]],
    stationMonthsIn === undefined ? [] : word('rain.from', ['station', 'medians']),
    // Its gauge is added up to today, where its record does not tell it.
    stationMonthsIn === undefined ? [] : [...day('rain.lastDay', isoDay(todayDay)), ['rain.halfYear', { isToBeTold: true }]],
  );
  return { single };
};
