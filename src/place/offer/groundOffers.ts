import type { OfferKey } from '../../../calculators/kit/offers.ts';
import { onDryBasis } from '../../../calculators/math/forage/onDryBasis.ts';
import { yieldBasisPercents } from '../../../calculators/tables/yieldBasis.ts';
import type { Pasture } from '../model/pasture.ts';
import type { Place } from '../model/place.ts';
import type { Soil } from '../model/soil.ts';
import {
  amount,
  derived,
  meanIfAll,
  type Offered,
  type OfferedRow,
  type OfferMap,
  type OfferPart,
  offerMap,
  type RecordOffers,
  sumIfAll,
  told,
  word,
} from './offered.ts';
import { textureWords } from './textureWords.ts';

/** Depth classes as a form about soil loss has them: the deepest inch of each. */
const rootings = [
  [10, 'to-10'],
  [20, 'to-20'],
  [40, 'to-40'],
  [60, 'to-60'],
] as const;
const rootingOf = (depthIn: number): string => rootings.find(([most]) => depthIn <= most)?.[1] ?? 'deeper';

export const soilOf = ({ soils }: Place, { soilId }: Pasture): Soil | undefined => soils.find(({ id }) => id === soilId);
/** A place's yields are air-dry. */
const dryOf = (weightLb: number): number => onDryBasis({ weightLb, fromDryMatterPercent: yieldBasisPercents['air-dry'], toDryMatterPercent: 100 });
const standingFeeds: readonly string[] = ['tall-fescue', 'annual-range'];

function paddockAc({ areaAc, paddocks }: Pasture): number | undefined {
  if (paddocks.length === 0) return undefined;
  const sum = sumIfAll(paddocks.map((each) => each.areaAc)) ?? areaAc;
  return sum === undefined ? undefined : sum / paddocks.length;
}

/** All that is told of one pasture and of the soil under it. */
function pastureOffers(place: Place, pasture: Pasture): OfferMap {
  const soil = soilOf(place, pasture);
  const { forage, paddocks } = pasture;
  return offerMap(
    told('pasture.area', pasture, 'areaAc'),
    told('pasture.reach', pasture, 'reachPercent'),
    told('pasture.waterDistance', pasture, 'waterDistanceMi'),
    told('pasture.slope', pasture, 'slopePercent'),
    pasture.slopePercent === undefined ? [] : word('pasture.slopeFrom', 'known'),
    told('pasture.slopeLength', pasture, 'slopeLengthFt'),
    pasture.slopeLengthFt === undefined ? [] : word('pasture.lengthFrom', 'known'),
    word('pasture.cover', pasture.cover),
    told('pasture.groundCover', pasture, 'groundCoverPercent'),
    word('pasture.grazing', pasture.grazing),
    word('pasture.forage', forage),
    forage !== undefined && standingFeeds.includes(forage) ? word('pasture.standingFeed', forage) : [],
    word('pasture.stand', pasture.stand),
    word('pasture.condition', pasture.condition),
    told('pasture.density', pasture, 'densityLbPerAcIn'),
    told('pasture.startHeight', pasture, 'startHeightIn'),
    told('pasture.stopHeight', pasture, 'stopHeightIn'),
    told('pasture.normal', pasture, 'normalLbPerAc'),
    told('pasture.poor', pasture, 'poorLbPerAc'),
    amount('pasture.paddocks', paddocks.length === 0 ? undefined : paddocks.length),
    derived('pasture.paddockArea', paddockAc(pasture)),
    told('pasture.rootsMost', pasture, 'rootsMostIn'),
    told('pasture.rootsDeepest', pasture, 'rootsDeepestIn'),
    word('pasture.texture', soil?.texture && textureWords(soil.texture)),
    word('pasture.soilGroup', soil?.soilGroup),
    told('pasture.organic', soil, 'organicMatterPercent'),
    word('pasture.rooting', soil?.depthIn === undefined ? undefined : rootingOf(soil.depthIn)),
  );
}

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
  const told = pastures.map((pasture) => ({ areaAc: pasture.areaAc, offers: pastureOffers(place, pasture) }));
  const isDensityKnown = told.length > 0 && told.every(({ offers }) => offers.has('pasture.density'));
  const all = ofEach.flatMap(([key, one]): readonly (readonly [OfferKey, Offered])[] => {
    if (key === 'pastures.density' && !isDensityKnown) return [];
    const each = told.flatMap(({ areaAc, offers }) => {
      const offered = offers.get(one);
      return offered === undefined ? [] : [{ areaAc, offered }];
    });
    const among = each.length < told.length ? `told of ${each.length} of ${told.length} pastures` : '';
    return [...together(key, each, among)];
  });
  return new Map([...all, ...offerMap(isDensityKnown ? word('pastures.densityFrom', 'own') : [])]);
}

/** A row for each pasture whose acres are known. */
const pastureRows = (place: Place, pastures: readonly Pasture[], record: RecordOffers | undefined): readonly OfferedRow[] =>
  pastures.flatMap((pasture) => {
    const cells = new Map([...pastureOffers(place, pasture), ...(record?.ofPasture.get(pasture.id) ?? [])]);
    return pasture.areaAc === undefined ? [] : [{ name: pasture.name, size: pasture.areaAc, cells }];
  });

/** What is told of several pastures together. */
function pasturesOffers(pastures: readonly Pasture[], isChosen: boolean): OfferMap {
  const [only, another] = pastures;
  const known = pastures.filter(({ normalLbPerAc }) => normalLbPerAc !== undefined);
  const normalLbPerAc = meanIfAll(known.map(({ normalLbPerAc, areaAc }) => ({ value: normalLbPerAc, weight: areaAc })));
  return offerMap(
    only && !another ? told('pastures.area', only, 'areaAc') : amount('pastures.area', sumIfAll(pastures.map(({ areaAc }) => areaAc))),
    derived('pastures.normal', normalLbPerAc),
    derived('pastures.normalDry', normalLbPerAc === undefined ? undefined : dryOf(normalLbPerAc), 'less the tenth of water in air-dry pounds'),
    pastures.length === 0 ? [] : word('pastures.reachFrom', pastures.every(({ reachPercent }) => reachPercent !== undefined) ? 'own' : 'guide'),
    known.length > 0 ? word('pastures.yieldFrom', 'survey') : [],
    isChosen ? word('pastures.ground', pastures.length > 1 ? 'parts' : 'one') : [],
  );
}

export const part: OfferPart = ({ place, pastures, isChosen, pasture, record }) => ({
  single: new Map([...pasturesOffers(pastures, isChosen), ...togetherOffers(place, pastures), ...(pasture ? pastureOffers(place, pasture) : [])]),
  tables: { pastures: pastureRows(place, pastures, record) },
});
