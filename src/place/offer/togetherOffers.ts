import type { OfferKey } from '../../../calculators/kit/offers.ts';
import type { Pasture } from '../model/pasture.ts';
import type { Place } from '../model/place.ts';
import { pastureOffers } from './groundOffers.ts';
import { amount, derived, meanIfAll, type Offered, type OfferMap, type OfferPart, offerMap, sumIfAll, told, word } from './offered.ts';

/** What several pastures, taken as one ground, have from what is told of each. */
const ofEach = [
  ['pastures.reach', 'pasture.reach'],
  ['pastures.stand', 'pasture.stand'],
  ['pastures.condition', 'pasture.condition'],
  ['pastures.density', 'pasture.density'],
  ['pastures.stopHeight', 'pasture.stopHeight'],
  ['pastures.texture', 'pasture.texture'],
  ['pastures.organic', 'pasture.organic'],
  ['pastures.rootsMost', 'pasture.rootsMost'],
  ['pastures.slope', 'pasture.slope'],
  ['pastures.slopeLength', 'pasture.slopeLength'],
] as const satisfies readonly (readonly [OfferKey, OfferKey])[];
const isSameSaid = (one: Offered, other: Offered): boolean =>
  'amount' in one && 'amount' in other ? one.amount === other.amount : JSON.stringify(one) === JSON.stringify(other);

/** Of pastures of which each says something: what all say alike, else the mean by acres of a number, and the word of the most acres. Without acres neither is known. */
function together(key: OfferKey, each: readonly { readonly areaAc: number | undefined; readonly offered: Offered }[], among: string): OfferMap {
  const [first] = each;
  if (first === undefined) return offerMap();
  const says = (how: string): string | undefined => [how, among].filter((part) => part !== '').join('; ') || undefined;
  if (each.every(({ offered }) => isSameSaid(offered, first.offered))) return offerMap([[key, { ...first.offered, says: says('') }]]);
  const amounts = each.map(({ areaAc, offered }) => ({ value: 'amount' in offered ? offered.amount : undefined, weight: areaAc }));
  if ('amount' in first.offered) return offerMap(derived(key, meanIfAll(amounts), says('mean by acres')));
  if (sumIfAll(each.map(({ areaAc }) => areaAc)) === undefined) return offerMap();
  const acresOf = (said: Offered): number => each.reduce((sum, { areaAc = 0, offered }) => sum + (isSameSaid(offered, said) ? areaAc : 0), 0);
  const most = each.toSorted((one, other) => acresOf(other.offered) - acresOf(one.offered))[0] ?? first;
  return offerMap([[key, { ...most.offered, says: says('most of the acres; the rest differs') }]]);
}
/** The same for all that a form takes of ground as a whole. Pounds in an inch are known of it only where they are of every part. */
function togetherOffers(place: Place, pastures: readonly Pasture[]): OfferMap {
  const [only, another] = pastures;
  const parts = pastures.map((pasture) => ({ areaAc: pasture.areaAc, offers: pastureOffers(place, pasture) }));
  const isDensityKnown = parts.length > 0 && parts.every(({ offers }) => offers.has('pasture.density'));
  const all = ofEach.flatMap(([key, one]): readonly (readonly [OfferKey, Offered])[] => {
    if (key === 'pastures.density' && !isDensityKnown) return [];
    const each = parts.flatMap(({ areaAc, offers }) => {
      const offered = offers.get(one);
      return offered === undefined ? [] : [{ areaAc, offered }];
    });
    const among = each.length < parts.length ? `told of ${each.length} of ${parts.length} pastures` : '';
    return [...together(key, each, among)];
  });
  return new Map([
    ...all,
    ...offerMap(
      only && !another ? told('pastures.area', only, 'areaAc') : amount('pastures.area', sumIfAll(pastures.map(({ areaAc }) => areaAc))),
      isDensityKnown ? word('pastures.densityFrom', 'own') : [],
    ),
  ]);
}

export const part: OfferPart = ({ place, pastures }) => ({ single: togetherOffers(place, pastures) });
