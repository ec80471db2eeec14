import type { HayStack } from '../model/hay.ts';
import type { Place } from '../model/place.ts';
import { amount, day, type OfferMap, type OfferPart, type Offers, offerMap, sumIfAll, told, typedUnder, word } from './offered.ts';

const stackLb = ({ baleCount, baleLb }: HayStack): number | undefined =>
  baleCount === undefined || baleLb === undefined ? undefined : baleCount * baleLb;
/** Stacks that anything lies in, the largest first. */
const stacksOf = ({ hay }: Place): readonly HayStack[] =>
  (hay?.stacks ?? [])
    .filter(({ baleCount }) => baleCount !== undefined && baleCount > 0)
    // One whose bales nobody weighed goes last.
    .toSorted((one, other) => (stackLb(other) ?? 0) - (stackLb(one) ?? 0));

/** Hay on hand and hay to buy. A form has room for one stack: the largest. */
function hayOffers(place: Place): OfferMap {
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
function hayBesides(place: Place): Offers['besides'] {
  const others = stacksOf(place).length - 1;
  if (others < 1) return [];
  const many = others === 1 ? 'Another stack of your place does' : `${others} more stacks of your place do`;
  return [{ key: 'hay.count', say: `${many} not fit here. This is the largest.` }];
}

export const part: OfferPart = ({ place }) => ({ single: hayOffers(place), besides: hayBesides(place) });
