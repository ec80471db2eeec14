import type { Pasture } from '../model/pasture.ts';
import type { Place } from '../model/place.ts';

/** Ground that stock are moved onto: a paddock, or a pasture that has none. */
export interface Ground {
  readonly id: string;
  readonly name: string;
  readonly areaAc?: number;
  readonly pasture: Pasture;
}

const isGrazed = ({ use }: Pasture): boolean => use === undefined || use === 'grazed';
/** A paddock without acres of its own has its even share of the pasture. */
const shareAc = ({ areaAc, paddocks }: Pasture): number | undefined => (areaAc === undefined ? undefined : areaAc / paddocks.length);

const groundsIn = (pasture: Pasture): readonly Ground[] => {
  const { id, name, areaAc, paddocks } = pasture;
  if (paddocks.length === 0) return [{ id, name, ...(areaAc === undefined ? {} : { areaAc }), pasture }];
  return paddocks.map((paddock) => {
    const acres = paddock.areaAc ?? shareAc(pasture);
    return { id: paddock.id, name: paddock.name, ...(acres === undefined ? {} : { areaAc: acres }), pasture };
  });
};
/** All that is grazed, in the order in which the place tells it. */
export const groundsOf = ({ pastures }: Place): readonly Ground[] => pastures.filter(isGrazed).flatMap(groundsIn);
/** Any ground by its id, hay ground too: stock go there after the last cutting. */
export const groundsById = ({ pastures }: Place): ReadonlyMap<string, Ground> =>
  new Map(pastures.flatMap((pasture) => [...groundsIn(pasture), ...wholeOf(pasture)]).map((each) => [each.id, each]));
/** A pasture that was divided later is still known by what was kept of it whole. */
const wholeOf = (pasture: Pasture): readonly Ground[] => {
  const { id, name, areaAc, paddocks } = pasture;
  return paddocks.length === 0 ? [] : [{ id, name, ...(areaAc === undefined ? {} : { areaAc }), pasture }];
};
