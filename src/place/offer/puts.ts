import type { OfferKey } from '../../../calculators/kit/offers.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import type { Place } from '../model/place.ts';
import { readPlace } from '../model/readRecord.ts';
import type { Soil } from '../model/soil.ts';

// The way back from a form: where in a place a figure is kept that a form takes from there.

/** Puts a figure into a place, as plain data: the model's own schema says whether it is one still. */
export type Put = (place: Place) => Place;
type Value = number | string | boolean;

/** Of the place itself. */
const ofPlace: Readonly<Partial<Record<OfferKey, readonly [string, string?, string?]>>> = {
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
  'hay.feeder': ['hay', 'feeder'],
  'hay.boughtBale': ['hay', 'bought', 'baleLb'],
  'hay.boughtStorage': ['hay', 'bought', 'storedAs'],
  'hay.boughtMoisture': ['hay', 'bought', 'moisturePercent'],
  'hay.load': ['hay', 'bought', 'loadCount'],
  'tools.frame': ['tools', 'frame', 'kind'],
  'tools.frameAround': ['tools', 'frame', 'aroundIn'],
  'tools.frameAcross': ['tools', 'frame', 'acrossIn'],
  'tools.frameLength': ['tools', 'frame', 'lengthIn'],
  'tools.frameWidth': ['tools', 'frame', 'widthIn'],
  'tools.ringBore': ['tools', 'ringBoreIn'],
  'tools.ringInserted': ['tools', 'ringInsertedIn'],
  'tools.pouring': ['tools', 'pouringMl'],
  'tools.canAcross': ['tools', 'canAcrossIn'],
  'tools.canTall': ['tools', 'canTallIn'],
  'tools.pace': ['tools', 'paceFt'],
};
/** Of one pasture: a form about several as one ground says it of the one that was chosen. */
const ofPasture: Readonly<Partial<Record<OfferKey, string>>> = {
  'pasture.area': 'areaAc',
  'pastures.area': 'areaAc',
  'pasture.reach': 'reachPercent',
  'pastures.reach': 'reachPercent',
  'pasture.waterDistance': 'waterDistanceMi',
  'pasture.slope': 'slopePercent',
  'pastures.slope': 'slopePercent',
  'pasture.slopeLength': 'slopeLengthFt',
  'pastures.slopeLength': 'slopeLengthFt',
  'pasture.cover': 'cover',
  'pasture.groundCover': 'groundCoverPercent',
  'pasture.grazing': 'grazing',
  'pasture.forage': 'forage',
  'pasture.stand': 'stand',
  'pastures.stand': 'stand',
  'pasture.condition': 'condition',
  'pastures.condition': 'condition',
  'pasture.density': 'densityLbPerAcIn',
  'pastures.density': 'densityLbPerAcIn',
  'pasture.startHeight': 'startHeightIn',
  'pasture.stopHeight': 'stopHeightIn',
  'pastures.stopHeight': 'stopHeightIn',
  'pasture.normal': 'normalLbPerAc',
  'pastures.normal': 'normalLbPerAc',
  'pasture.poor': 'poorLbPerAc',
  'pasture.rootsMost': 'rootsMostIn',
  'pastures.rootsMost': 'rootsMostIn',
  'pasture.rootsDeepest': 'rootsDeepestIn',
};

/** Of the soil under a pasture. */
const ofSoil: Readonly<Partial<Record<OfferKey, string>>> = {
  'pasture.texture': 'texture',
  'pastures.texture': 'texture',
  'pasture.soilGroup': 'soilGroup',
  'pasture.organic': 'organicMatterPercent',
  'pastures.organic': 'organicMatterPercent',
};
/** Of the stack that forms are about: the only one, or the one that is made of it. */
const ofStack: Readonly<Partial<Record<OfferKey, string>>> = {
  'hay.count': 'baleCount',
  'hay.bale': 'baleLb',
  'hay.baled': 'baledDay',
  'hay.weighed': 'weighedDay',
  'hay.storage': 'storedAs',
  'hay.moisture': 'moisturePercent',
};
/** Of the water that forms are about. */
const ofWater: Readonly<Partial<Record<OfferKey, readonly [string, string?]>>> = {
  'water.supply': ['supply'],
  'water.length': ['lengthFt'],
  'water.width': ['widthFt'],
  'water.surface': ['surfaceAc'],
  'water.shore': ['shoreFt'],
  'water.maxDepth': ['maxDepthFt'],
  'water.deadDepth': ['deadDepthFt'],
  'water.evaporation': ['evaporationInPerDay'],
  'water.seepage': ['seepageInPerDay'],
  'water.flow': ['flowGpm'],
  'water.storage': ['tanks', 'shape'],
  'water.tanks': ['tanks', 'count'],
  'water.tankAcross': ['tanks', 'acrossFt'],
  'water.tankLength': ['tanks', 'lengthFt'],
  'water.tankWidth': ['tanks', 'widthFt'],
  'water.tankDepth': ['tanks', 'depthFt'],
  'water.sulfate': ['slip', 'sulfateMgPerL'],
  'water.salt': ['slip', 'saltMgPerL'],
  'water.nitrate': ['slip', 'nitrateMgPerL'],
};

const partOf = (place: object, name: string): object => {
  const found = Object.entries(place).find(([key]) => key === name)?.[1];
  return typeof found === 'object' && found !== null ? found : {};
};
/** The field written, and what lies round it left as it is. */
const written = <T extends object>(of: T, path: readonly (string | undefined)[], value: Value): T => {
  const [first, ...rest] = path.filter((each) => each !== undefined);
  return first === undefined ? of : { ...of, [first]: rest.length === 0 ? value : written(partOf(of, first), rest, value) };
};
/** The soil under a pasture; where nobody has told of one there is one now. */
export function putSoil(place: Place, pastureId: string, field: string, value: Value | Soil['layers']): Place {
  const pasture = place.pastures.find(({ id }) => id === pastureId);
  if (pasture === undefined) return place;
  const id = pasture.soilId ?? `soil-${pastureId}`.slice(0, 64);
  const soils = place.soils.some((each) => each.id === id) ? place.soils : [...place.soils, { id, name: `Soil of ${pasture.name}`.slice(0, 200) }];
  return {
    ...place,
    soils: soils.map((each) => (each.id === id ? { ...each, [field]: value } : each)),
    pastures: place.pastures.map((each) => (each.id === pastureId ? { ...each, soilId: id } : each)),
  };
}
/** Of several stacks nobody knows which a form meant. Bales were counted on the day on which they are kept. */
function putStack(place: Place, field: string, value: Value, today: string): Place {
  const stacks = place.hay?.stacks ?? [];
  if (stacks.length > 1) return place;
  const [stack = { id: 'stack-1' }] = stacks;
  return { ...place, hay: { ...place.hay, stacks: [{ ...stack, [field]: value, ...(field === 'baleCount' ? { countedDay: today } : {}) }] } };
}
/** Which pasture and which water a form was about. */
export interface Goes {
  readonly pastureId: string;
  readonly waterId: string;
}
/** Where a figure of a form goes; nothing where a place has no room for it. The pasture and the water must be there by their ids. */
export function puts(key: OfferKey, value: Value, { todayDay, pastureId, waterId }: Goes & { readonly todayDay: number }): Put | undefined {
  const field = ofPasture[key];
  if (field !== undefined)
    return (place) => ({ ...place, pastures: place.pastures.map((each) => (each.id === pastureId ? { ...each, [field]: value } : each)) });
  const [soil, stack, water, path] = [ofSoil[key], ofStack[key], ofWater[key], ofPlace[key]];
  if (soil !== undefined) return (place) => putSoil(place, pastureId, soil, value);
  if (stack !== undefined) return (place) => putStack(place, stack, value, isoDay(todayDay));
  if (water !== undefined)
    return (place) => ({ ...place, water: place.water.map((each) => (each.id === waterId ? written(each, water, value) : each)) });
  if (path === undefined) return undefined;
  return (place) => {
    const after = written(place, path, value);
    // Hay is a list of stacks with what is bought beside it.
    return path[0] === 'hay' ? { ...after, hay: { ...after.hay, stacks: place.hay?.stacks ?? [] } } : after;
  };
}
/** Is it a place still? A word that only a form has is not kept. */
export const isWhole = (place: Place): boolean => readPlace(place).is === 'read';
