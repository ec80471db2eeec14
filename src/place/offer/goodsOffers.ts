import { dayOf, printDay } from '../../../calculators/units/printQuantity.ts';
import type { HayStack } from '../model/hay.ts';
import type { Place } from '../model/place.ts';
import type { WaterPoint } from '../model/waterPoint.ts';
import { amount, day, type OfferMap, type Offers, offerMap, sumIfAll, word } from './offered.ts';

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
  const isWeighedNow = largest?.weighedAt === 'now' && largest.weighedDay !== undefined;
  return offerMap(
    word('hay.onHand', largest === undefined ? 'none' : isWeighedNow ? 'now' : 'at-baling'),
    amount('hay.count', largest?.baleCount),
    amount('hay.bale', largest?.baleLb),
    day('hay.baled', largest?.baledDay),
    day('hay.weighed', largest?.weighedDay),
    word('hay.storage', largest?.storedAs),
    amount('hay.moisture', largest?.moisturePercent ?? hay.bought?.moisturePercent),
    amount('hay.ownLb', sumIfAll(stacks.map(stackLb))),
    amount('hay.boughtBale', hay.bought?.baleLb),
    word('hay.boughtStorage', hay.bought?.storedAs),
    amount('hay.boughtMoisture', hay.bought?.moisturePercent),
    amount('hay.load', hay.bought?.loadCount),
    word('hay.feeder', hay.feeder),
  );
}
export function hayBesides(place: Place): Offers['besides'] {
  const others = stacksOf(place).length - 1;
  if (others < 1) return [];
  const many = others === 1 ? 'Another stack of your place does' : `${others} more stacks of your place do`;
  return [{ key: 'hay.count', say: `${many} not fit here. This is the largest.` }];
}

export function priceOffers({ prices }: Place): OfferMap {
  if (prices === undefined) return offerMap();
  const { hayLowUsdPerTon, hayLikelyUsdPerTon, hayHighUsdPerTon } = prices;
  const hasRange = hayLowUsdPerTon !== undefined && hayHighUsdPerTon !== undefined;
  return offerMap(
    day('prices.seen', prices.seenDay),
    hayLikelyUsdPerTon === undefined ? [] : word('prices.hayFrom', hasRange ? 'range' : 'ton'),
    amount('prices.hayLow', hayLowUsdPerTon),
    amount('prices.hayLikely', hayLikelyUsdPerTon),
    amount('prices.hayHigh', hayHighUsdPerTon),
    amount('prices.freight', prices.freightUsdPerLoad),
    amount('prices.calfEarly', prices.calfEarlyUsdPerCwt),
    amount('prices.calfUsual', prices.calfUsualUsdPerCwt),
    amount('prices.cowSale', prices.cowSaleUsd),
    amount('prices.buyBackLow', prices.buyBackLowUsd),
    amount('prices.buyBackLikely', prices.buyBackLikelyUsd),
    amount('prices.buyBackHigh', prices.buyBackHighUsd),
    amount('prices.interest', prices.interestPercent),
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
  return offerMap(
    word('water.supply', point.supply),
    word('water.surfaceFrom', surfaceFrom(point)),
    amount('water.length', point.lengthFt),
    amount('water.width', point.widthFt),
    amount('water.surface', point.surfaceAc),
    amount('water.shore', point.shoreFt),
    amount('water.maxDepth', point.maxDepthFt),
    amount('water.deadDepth', point.deadDepthFt),
    amount('water.evaporation', point.evaporationInPerDay),
    amount('water.seepage', point.seepageInPerDay),
    amount('water.flow', point.flowGpm),
    point.flowGpm === undefined ? [] : word('water.flowFrom', 'known'),
    word('water.storage', tanks?.shape),
    amount('water.tanks', tanks?.count),
    amount('water.tankAcross', tanks?.acrossFt),
    amount('water.tankLength', tanks?.lengthFt),
    amount('water.tankWidth', tanks?.widthFt),
    amount('water.tankDepth', tanks?.depthFt),
    slip?.sulfateMgPerL === undefined || slip.saltMgPerL === undefined ? [] : word('water.slip', 'tested'),
    amount('water.sulfate', slip?.sulfateMgPerL, said),
    amount('water.salt', slip?.saltMgPerL, said),
    amount('water.nitrate', slip?.nitrateMgPerL, said),
  );
}

export function toolOffers({ tools }: Place): OfferMap {
  if (tools === undefined) return offerMap();
  const frame = tools.frame?.kind === undefined ? undefined : tools.frame;
  return offerMap(
    word('tools.frame', frame?.kind),
    amount('tools.frameAround', frame?.aroundIn),
    amount('tools.frameAcross', frame?.acrossIn),
    amount('tools.frameLength', frame?.lengthIn),
    amount('tools.frameWidth', frame?.widthIn),
    amount('tools.ringBore', tools.ringBoreIn),
    amount('tools.ringInserted', tools.ringInsertedIn),
    amount('tools.pouring', tools.pouringMl),
    amount('tools.canAcross', tools.canAcrossIn),
    amount('tools.canTall', tools.canTallIn),
    amount('tools.pace', tools.paceFt),
  );
}
