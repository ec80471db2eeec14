import type { HayStack } from '../model/hay.ts';
import type { Place } from '../model/place.ts';
import type { CountedStack, Left } from './hayLeft.ts';
import { amount, day, type OfferMap, type OfferPart, type Offers, offerMap, type RecordOffers, sumIfAll, told, typedUnder, word } from './offered.ts';

const stackLb = ({ baleCount, baleLb }: HayStack): number | undefined =>
  baleCount === undefined || baleLb === undefined ? undefined : baleCount * baleLb;
/** Stacks that anything lay in when they were counted, the largest first. */
const stacksOf = ({ hay }: Place): readonly CountedStack[] =>
  (hay?.stacks ?? [])
    .flatMap((stack) => (stack.baleCount !== undefined && stack.baleCount > 0 ? [{ ...stack, baleCount: stack.baleCount }] : []))
    // One whose bales nobody weighed goes last.
    .toSorted((one, other) => (stackLb(other) ?? 0) - (stackLb(one) ?? 0));

/** As it was typed, unless something was taken off. */
const countOf = (stack: CountedStack, { amount: bales, says }: Left) =>
  bales === stack.baleCount ? told('hay.count', stack, 'baleCount', { says }) : amount('hay.count', bales, says);

/** Hay on hand and hay to buy. A form has room for one stack: the largest. What the record has fed since it was counted is taken off, if there is a record. */
function hayOffers(place: Place, record: RecordOffers | undefined): OfferMap {
  const { hay } = place;
  if (hay === undefined) return offerMap();
  const stacks = stacksOf(place);
  const [counted] = stacks;
  const left: Left | undefined = counted && (record?.balesLeft(counted, stacks.length === 1) ?? { amount: counted.baleCount });
  const largest = left?.amount === 0 ? undefined : counted;
  const allLb = sumIfAll(stacks.map(stackLb));
  const pounds = record ? record.poundsLeft(stacks) : allLb === undefined ? undefined : { amount: allLb, says: undefined };
  const bought = { typed: typedUnder(place.typed, 'hay.bought.') };
  const isWeighedNow = largest?.weighedAt === 'now' && largest.weighedDay !== undefined;
  return offerMap(
    largest === undefined ? [['hay.onHand', { words: ['none'], says: left?.says }]] : word('hay.onHand', isWeighedNow ? 'now' : 'at-baling'),
    largest === undefined || left === undefined ? [] : countOf(largest, left),
    told('hay.bale', largest, 'baleLb'),
    day('hay.baled', largest?.baledDay),
    day('hay.weighed', largest?.weighedDay),
    word('hay.storage', largest?.storedAs),
    amount('hay.moisture', largest?.moisturePercent ?? hay.bought?.moisturePercent),
    amount('hay.ownLb', pounds?.amount, pounds?.says),
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

export const part: OfferPart = ({ place, record }) => ({ single: hayOffers(place, record), besides: hayBesides(place) });
