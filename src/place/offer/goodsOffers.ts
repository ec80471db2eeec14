import { dayOf, printDay } from '../../../calculators/units/printQuantity.ts';
import type { HayStack } from '../model/hay.ts';
import type { Place } from '../model/place.ts';
import type { WaterPoint } from '../model/waterPoint.ts';
import { amount, day, type OfferMap, type Offers, offerMap, sumIfAll, told, typedUnder, word } from './offered.ts';

const stackLb = ({ baleCount, baleLb }: HayStack): number | undefined =>
  baleCount === undefined || baleLb === undefined ? undefined : baleCount * baleLb;
/** Stacks that anything lies in, the largest first. */
const stacksOf = ({ hay }: Place): readonly HayStack[] =>
  (hay?.stacks ?? [])
    .filter(({ baleCount }) => baleCount !== undefined && baleCount > 0)
    // One whose bales nobody weighed goes last.
    .toSorted((one, other) => (stackLb(other) ?? 0) - (stackLb(one) ?? 0));

/** Hay on hand and hay to buy. A form has room for one stack: the largest. */
export function hayOffers(place: Place): OfferMap {
  const { hay } = place;
  if (hay === undefined) return offerMap();
  const stacks = stacksOf(place);
  const [largest] = stacks;
  const bought = { typed: typedUnder(place.typed, 'hay.bought.') };
  const isWeighedNow = largest?.weighedAt === 'now' && largest.weighedDay !== undefined;
  return offerMap(
    word('hay.onHand', largest === undefined ? 'none' : isWeighedNow ? 'now' : 'at-baling'),
    told('hay.count', largest, 'baleCount'),
    told('hay.bale', largest, 'baleLb'),
    day('hay.baled', largest?.baledDay),
    day('hay.weighed', largest?.weighedDay),
    word('hay.storage', largest?.storedAs),
    amount('hay.moisture', largest?.moisturePercent ?? hay.bought?.moisturePercent),
    amount('hay.ownLb', sumIfAll(stacks.map(stackLb))),
    told('hay.boughtBale', hay.bought, 'baleLb', bought),
    word('hay.boughtStorage', hay.bought?.storedAs),
    told('hay.boughtMoisture', hay.bought, 'moisturePercent', bought),
    told('hay.load', hay.bought, 'loadCount', bought),
    word('hay.feeder', hay.feeder),
  );
}
export function hayBesides(place: Place): Offers['besides'] {
  const others = stacksOf(place).length - 1;
  if (others < 1) return [];
  const many = others === 1 ? 'Another stack of your place does' : `${others} more stacks of your place do`;
  return [{ key: 'hay.count', say: `${many} not fit here. This is the largest.` }];
}

export function priceOffers({ prices, typed: all }: Place): OfferMap {
  if (prices === undefined) return offerMap();
  const { hayLowUsdPerTon, hayLikelyUsdPerTon, hayHighUsdPerTon } = prices;
  const typed = { typed: typedUnder(all, 'prices.') };
  const hasRange = hayLowUsdPerTon !== undefined && hayHighUsdPerTon !== undefined;
  return offerMap(
    day('prices.seen', prices.seenDay),
    hayLikelyUsdPerTon === undefined ? [] : word('prices.hayFrom', hasRange ? 'range' : 'ton'),
    told('prices.hayLow', prices, 'hayLowUsdPerTon', typed),
    told('prices.hayLikely', prices, 'hayLikelyUsdPerTon', typed),
    told('prices.hayHigh', prices, 'hayHighUsdPerTon', typed),
    told('prices.freight', prices, 'freightUsdPerLoad', typed),
    told('prices.calfEarly', prices, 'calfEarlyUsdPerCwt', typed),
    told('prices.calfUsual', prices, 'calfUsualUsdPerCwt', typed),
    told('prices.cowSale', prices, 'cowSaleUsd', typed),
    told('prices.buyBackLow', prices, 'buyBackLowUsd', typed),
    told('prices.buyBackLikely', prices, 'buyBackLikelyUsd', typed),
    told('prices.buyBackHigh', prices, 'buyBackHighUsd', typed),
    told('prices.interest', prices, 'interestPercent', typed),
  );
}

/** How the surface of a pond is known, the surest way first. */
const surfaceFrom = ({ surfaceAc, lengthFt, widthFt, shoreFt }: WaterPoint): string | undefined => {
  if (surfaceAc !== undefined) return 'known';
  if (lengthFt !== undefined && widthFt !== undefined) return 'across';
  return shoreFt === undefined ? undefined : 'shore';
};
export function waterOffers(point: WaterPoint): OfferMap {
  // Tanks of no known shape, and a slip of no known day, tell nothing.
  const tanks = point.tanks?.shape === undefined ? undefined : point.tanks;
  const slip = point.slip?.day === undefined ? undefined : point.slip;
  const slipDay = slip?.day === undefined ? undefined : dayOf(slip.day);
  const said = slipDay === undefined ? undefined : `slip of ${printDay(slipDay)}`;
  const ofTanks = { typed: typedUnder(point.typed, 'tanks.') };
  const ofSlip = { says: said, typed: typedUnder(point.typed, 'slip.') };
  return offerMap(
    word('water.supply', point.supply),
    word('water.surfaceFrom', surfaceFrom(point)),
    told('water.length', point, 'lengthFt'),
    told('water.width', point, 'widthFt'),
    told('water.surface', point, 'surfaceAc'),
    told('water.shore', point, 'shoreFt'),
    told('water.maxDepth', point, 'maxDepthFt'),
    told('water.deadDepth', point, 'deadDepthFt'),
    told('water.evaporation', point, 'evaporationInPerDay'),
    told('water.seepage', point, 'seepageInPerDay'),
    told('water.flow', point, 'flowGpm'),
    point.flowGpm === undefined ? [] : word('water.flowFrom', 'known'),
    word('water.storage', tanks?.shape),
    told('water.tanks', tanks, 'count', ofTanks),
    told('water.tankAcross', tanks, 'acrossFt', ofTanks),
    told('water.tankLength', tanks, 'lengthFt', ofTanks),
    told('water.tankWidth', tanks, 'widthFt', ofTanks),
    told('water.tankDepth', tanks, 'depthFt', ofTanks),
    slip?.sulfateMgPerL === undefined || slip.saltMgPerL === undefined ? [] : word('water.slip', 'tested'),
    told('water.sulfate', slip, 'sulfateMgPerL', ofSlip),
    told('water.salt', slip, 'saltMgPerL', ofSlip),
    told('water.nitrate', slip, 'nitrateMgPerL', ofSlip),
  );
}

export function toolOffers({ tools, typed: all }: Place): OfferMap {
  if (tools === undefined) return offerMap();
  const frame = tools.frame?.kind === undefined ? undefined : tools.frame;
  const typed = { typed: typedUnder(all, 'tools.') };
  const ofFrame = { typed: typedUnder(all, 'tools.frame.') };
  return offerMap(
    word('tools.frame', frame?.kind),
    told('tools.frameAround', frame, 'aroundIn', ofFrame),
    told('tools.frameAcross', frame, 'acrossIn', ofFrame),
    told('tools.frameLength', frame, 'lengthIn', ofFrame),
    told('tools.frameWidth', frame, 'widthIn', ofFrame),
    told('tools.ringBore', tools, 'ringBoreIn', typed),
    told('tools.ringInserted', tools, 'ringInsertedIn', typed),
    told('tools.pouring', tools, 'pouringMl', typed),
    told('tools.canAcross', tools, 'canAcrossIn', typed),
    told('tools.canTall', tools, 'canTallIn', typed),
    told('tools.pace', tools, 'paceFt', typed),
  );
}
