import type { Pasture } from '../model/pasture.ts';
import type { Place } from '../model/place.ts';
import { amount, derived, meanIfAll, type OfferMap, type OfferPart, offerMap, sumIfAll, told, word } from './offered.ts';

/** Dry matter in a place's yields, which are air-dry, percent. A test holds it to the table of yields, which would bring a whole calculator along. */
export const airDryPercent = 90;
const dryOf = (weightLb: number): number => (weightLb * airDryPercent) / 100;

/** All that is cut, whichever pastures are chosen to be grazed; nothing where one of them has no acres, or none is told. */
function hayArea({ pastures }: Place): OfferMap {
  const cut = pastures.filter(({ use }) => use === 'hay');
  const [only, another] = cut;
  if (only && !another) return offerMap(told('pastures.hayArea', only, 'areaAc', { says: only.name }));
  return offerMap(amount('pastures.hayArea', sumIfAll(cut.map(({ areaAc }) => areaAc)), `${cut.length} hay meadows`));
}
/** What is told of several pastures together. */
function pasturesOffers(pastures: readonly Pasture[], isChosen: boolean): OfferMap {
  const known = pastures.filter(({ normalLbPerAc }) => normalLbPerAc !== undefined);
  const normalLbPerAc = meanIfAll(known.map(({ normalLbPerAc, areaAc }) => ({ value: normalLbPerAc, weight: areaAc })));
  return offerMap(
    derived('pastures.normal', normalLbPerAc),
    derived('pastures.normalDry', normalLbPerAc === undefined ? undefined : dryOf(normalLbPerAc), 'less the tenth of water in air-dry pounds'),
    pastures.length === 0 ? [] : word('pastures.reachFrom', pastures.every(({ reachPercent }) => reachPercent !== undefined) ? 'own' : 'guide'),
    known.length > 0 ? word('pastures.yieldFrom', 'survey') : [],
    isChosen ? word('pastures.ground', pastures.length > 1 ? 'parts' : 'one') : [],
  );
}

export const part: OfferPart = ({ place, pastures, isChosen }) => ({ single: new Map([...pasturesOffers(pastures, isChosen), ...hayArea(place)]) });
