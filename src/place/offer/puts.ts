import type { OfferKey } from '../../../calculators/kit/offers.ts';
import type { Place } from '../model/place.ts';
import { readPlace } from '../model/readRecord.ts';

// The way back from a form: where in a place a figure is kept that a form takes from there.

/** Puts a figure into a place, as plain data: the model's own schema says whether it is one still. */
export type Put = (place: Place) => Place;
type Value = number | string | boolean;

/** Of the place itself. */
const ofPlace: Readonly<Partial<Record<OfferKey, readonly [string, string?]>>> = {
  'place.yearRain': ['yearRainIn'],
  'place.rainClass': ['rainClass'],
  'place.rainFactor': ['rainFactor'],
  'place.hot': ['hotF'],
  'herd.yardstick': ['yardstickLbPerDay'],
  'season.turnIn': ['season', 'turnInDay'],
  'season.end': ['season', 'endDay'],
  'season.hayFrom': ['season', 'hayFromDay'],
  'season.frost': ['season', 'frostDay'],
  'growth.curve': ['growth', 'curve'],
  'growth.start': ['growth', 'startMonth'],
  'growth.best': ['growth', 'bestMonth'],
  'growth.quit': ['growth', 'quitMonth'],
  'growth.fall': ['growth', 'fallFlush'],
  'grazing.stay': ['grazing', 'stayDays'],
  'grazing.herds': ['grazing', 'herdCount'],
  'prices.hayLow': ['prices', 'hayLowUsdPerTon'],
  'prices.hayLikely': ['prices', 'hayLikelyUsdPerTon'],
  'prices.hayHigh': ['prices', 'hayHighUsdPerTon'],
  'prices.freight': ['prices', 'freightUsdPerLoad'],
  'prices.calfEarly': ['prices', 'calfEarlyUsdPerCwt'],
  'prices.calfUsual': ['prices', 'calfUsualUsdPerCwt'],
  'prices.cowSale': ['prices', 'cowSaleUsd'],
  'prices.buyBackLow': ['prices', 'buyBackLowUsd'],
  'prices.buyBackLikely': ['prices', 'buyBackLikelyUsd'],
  'prices.buyBackHigh': ['prices', 'buyBackHighUsd'],
  'prices.interest': ['prices', 'interestPercent'],
  'prices.seen': ['prices', 'seenDay'],
  'tools.ringBore': ['tools', 'ringBoreIn'],
  'tools.ringInserted': ['tools', 'ringInsertedIn'],
  'tools.pouring': ['tools', 'pouringMl'],
  'tools.canAcross': ['tools', 'canAcrossIn'],
  'tools.canTall': ['tools', 'canTallIn'],
  'tools.pace': ['tools', 'paceFt'],
};
/** Of one pasture. */
const ofPasture: Readonly<Partial<Record<OfferKey, string>>> = {
  'pasture.area': 'areaAc',
  'pastures.area': 'areaAc',
  'pasture.reach': 'reachPercent',
  'pasture.waterDistance': 'waterDistanceMi',
  'pasture.slope': 'slopePercent',
  'pasture.slopeLength': 'slopeLengthFt',
  'pasture.cover': 'cover',
  'pasture.groundCover': 'groundCoverPercent',
  'pasture.grazing': 'grazing',
  'pasture.forage': 'forage',
  'pasture.stand': 'stand',
  'pasture.condition': 'condition',
  'pasture.density': 'densityLbPerAcIn',
  'pasture.startHeight': 'startHeightIn',
  'pasture.stopHeight': 'stopHeightIn',
  'pasture.normal': 'normalLbPerAc',
  'pastures.normal': 'normalLbPerAc',
  'pasture.poor': 'poorLbPerAc',
  'pasture.rootsMost': 'rootsMostIn',
  'pasture.rootsDeepest': 'rootsDeepestIn',
};

const partOf = (place: Place, name: string): object => {
  const found = Object.entries(place).find(([key]) => key === name)?.[1];
  return typeof found === 'object' && found !== null ? found : {};
};
/** Where a figure of a form goes; nothing where a place has no room for it. A pasture must be there by its id. */
export function puts(key: OfferKey, value: Value, pastureId: string): Put | undefined {
  const field = ofPasture[key];
  if (field !== undefined)
    return (place) => ({ ...place, pastures: place.pastures.map((each) => (each.id === pastureId ? { ...each, [field]: value } : each)) });
  const [first, second] = ofPlace[key] ?? [];
  if (first === undefined) return undefined;
  return (place) => ({ ...place, [first]: second === undefined ? value : { ...partOf(place, first), [second]: value } });
}
/** Is it a place still? A word that only a form has is not kept. */
export const isWhole = (place: Place): boolean => readPlace(place).is === 'read';
