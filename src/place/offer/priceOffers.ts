import { costPerTonEaten } from '../../../calculators/math/hay/costPerTonEaten.ts';
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

export const part: OfferPart = ({ place }) => ({ single: new Map([...priceOffers(place), ...deliveredOffers(place)]) });
