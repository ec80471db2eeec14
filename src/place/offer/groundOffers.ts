import type { Pasture } from '../model/pasture.ts';
import type { Place } from '../model/place.ts';
import type { Soil } from '../model/soil.ts';
import { amount, derived, type OfferedRow, type OfferMap, type OfferPart, offerMap, type RecordOffers, sumIfAll, told, word } from './offered.ts';
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
const standingFeeds: readonly string[] = ['tall-fescue', 'annual-range'];

function paddockAc({ areaAc, paddocks }: Pasture): number | undefined {
  if (paddocks.length === 0) return undefined;
  const sum = sumIfAll(paddocks.map((each) => each.areaAc)) ?? areaAc;
  return sum === undefined ? undefined : sum / paddocks.length;
}

/** All that is told of one pasture and of the soil under it. */
export function pastureOffers(place: Place, pasture: Pasture): OfferMap {
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

/** A row for each pasture whose acres are known. */
const pastureRows = (place: Place, pastures: readonly Pasture[], record: RecordOffers | undefined): readonly OfferedRow[] =>
  pastures.flatMap((pasture) => {
    const cells = new Map([...pastureOffers(place, pasture), ...(record?.ofPasture.get(pasture.id) ?? [])]);
    return pasture.areaAc === undefined ? [] : [{ name: pasture.name, size: pasture.areaAc, cells }];
  });

export const part: OfferPart = ({ place, pastures, pasture, record }) => ({
  ...(pasture ? { single: pastureOffers(place, pasture) } : {}),
  tables: { pastures: pastureRows(place, pastures, record) },
});
