import type { Place } from '../model/place.ts';
import { day, type OfferMap, type OfferPart, offerMap, told, typedUnder, word } from './offered.ts';

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

export const part: OfferPart = ({ place }) => ({ single: priceOffers(place) });
