import type { OfferKey } from '../../../calculators/kit/offers.ts';
import { costPerTonEaten } from '../../../calculators/math/hay/costPerTonEaten.ts';
import { dayOf, printDay } from '../../../calculators/units/printQuantity.ts';
import type { Place } from '../model/place.ts';
import { day, derived, type OfferMap, type OfferPart, offerMap, told, typedUnder, word } from './offered.ts';

const poundsInTon = 2000;
/** What is told beside a price that freight still has to be put on. */
const atGate = 'at the seller’s gate: add freight';

/** The likely price of hay, with its freight where a load's is known, by the ton as fed and by the ton of dry matter. */
function deliveredOffers({ prices, hay }: Place): OfferMap {
  const { hayLikelyUsdPerTon, freightUsdPerLoad } = prices ?? {};
  if (hayLikelyUsdPerTon === undefined) return offerMap();
  const { baleLb, loadCount, moisturePercent } = hay?.bought ?? {};
  const loadTon = ((baleLb ?? 0) * (loadCount ?? 0)) / poundsInTon;
  const freightUsdPerTon = freightUsdPerLoad === 0 ? 0 : freightUsdPerLoad && loadTon > 0 ? freightUsdPerLoad / loadTon : undefined;
  const pricePerTon = hayLikelyUsdPerTon + (freightUsdPerTon ?? 0);
  const says = freightUsdPerTon === undefined ? atGate : 'with freight';
  const dryUsdPerTon =
    moisturePercent === undefined ? undefined : costPerTonEaten({ pricePerTon, moisturePercent, storageLossPercent: 0, feedingLossPercent: 0 });
  return offerMap(
    derived('prices.hayDelivered', pricePerTon, says),
    derived('prices.hayDry', dryUsdPerTon, `${says}; divide by the share that is eaten`),
  );
}

function priceOffers({ prices, typed: all }: Place): OfferMap {
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

/** Prices that were seen longer ago are told to be old: common practice. */
const longestDays = 60;
/** What is told beside prices of a place that nobody has looked up for long. */
function oldWord({ prices }: Place, todayDay: number): string | undefined {
  const seenDay = prices?.seenDay === undefined ? undefined : dayOf(prices.seenDay);
  return seenDay === undefined || todayDay - seenDay <= longestDays ? undefined : `seen ${printDay(seenDay)}: ask again`;
}
const isSettled = (key: OfferKey): boolean => key === 'prices.hayFrom' || key === 'prices.interest';

export const part: OfferPart = ({ place, todayDay }) => {
  const old = oldWord(place, todayDay);
  const all = [...priceOffers(place), ...deliveredOffers(place)];
  const aged = all.map(
    ([key, offered]) => [key, isSettled(key) ? offered : { ...offered, says: [offered.says, old].filter(Boolean).join('; ') }] as const,
  );
  return { single: new Map(old === undefined ? all : aged) };
};
