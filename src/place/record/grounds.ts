import type { Pasture } from '../model/pasture.ts';
import type { Place } from '../model/place.ts';

/** Ground that stock are moved onto: a paddock, or a pasture that has none. */
export interface Ground {
  readonly id: string;
  /** By which it is told from every other: `1 (Low bench)` where two pastures have a paddock 1. */
  readonly name: string;
  /** As the place has it. */
  readonly ownName: string;
  readonly areaAc?: number;
  readonly pasture: Pasture;
}

const isGrazed = ({ use }: Pasture): boolean => use === undefined || use === 'grazed';
/** A paddock without acres of its own has its even share of what those with their own leave of the pasture, if that is anything. */
function shareAc({ areaAc, paddocks }: Pasture): number | undefined {
  if (areaAc === undefined) return undefined;
  const left = paddocks.reduce((sum, paddock) => sum - (paddock.areaAc ?? 0), areaAc);
  return left > 0 ? left / paddocks.filter((paddock) => paddock.areaAc === undefined).length : undefined;
}
const groundOf = (pasture: Pasture, { id, name }: { readonly id: string; readonly name: string }, areaAc: number | undefined): Ground => ({
  id,
  name,
  ownName: name,
  ...(areaAc === undefined ? {} : { areaAc }),
  pasture,
});
const spoken = (name: string): string => name.trim().toLowerCase();

function groundsIn({ pastures }: Place): readonly Ground[] {
  const all = pastures.flatMap((pasture) =>
    pasture.paddocks.length === 0
      ? groundOf(pasture, pasture, pasture.areaAc)
      : pasture.paddocks.map((paddock) => groundOf(pasture, paddock, paddock.areaAc ?? shareAc(pasture))),
  );
  const isTwice = ({ name }: Ground): boolean => all.filter((each) => spoken(each.name) === spoken(name)).length > 1;
  return all.map((each) => (each.id !== each.pasture.id && isTwice(each) ? { ...each, name: `${each.name} (${each.pasture.name})` } : each));
}
/** A pasture that was divided later is still known by what was kept of it whole. */
const wholeOf = (pasture: Pasture): readonly Ground[] =>
  pasture.paddocks.length === 0 ? [] : [{ ...groundOf(pasture, pasture, pasture.areaAc), name: `${pasture.name} (all of it)` }];

/** All that is grazed, in the order in which the place tells it. */
export const groundsOf = (place: Place): readonly Ground[] => groundsIn(place).filter(({ pasture }) => isGrazed(pasture));
/** What is cut: stock go there after the last cutting, and its height is read too. */
export const hayGroundsOf = (place: Place): readonly Ground[] => groundsIn(place).filter(({ pasture }) => pasture.use === 'hay');
/** Any ground by its id, hay ground too: stock go there after the last cutting. */
export function groundsById(place: Place): ReadonlyMap<string, Ground> {
  const grounds = groundsIn(place);
  return new Map(
    place.pastures
      .flatMap((pasture) => [...grounds.filter((each) => each.pasture.id === pasture.id), ...wholeOf(pasture)])
      .map((each) => [each.id, each]),
  );
}
/** Whether what stands on a ground stands on another too: a whole pasture and each of its paddocks lie in each other. */
export const isPartly = (paddockId: string, { id, pasture }: Ground): boolean =>
  paddockId === id || paddockId === pasture.id || (id === pasture.id && pasture.paddocks.some((paddock) => paddock.id === paddockId));
