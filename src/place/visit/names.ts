import type { Place } from '../model/place.ts';
import type { Visit } from '../model/visit.ts';

/** A name, and what the office's copy says in its place. */
interface Hidden {
  readonly name: string;
  readonly instead: string;
  /** A part of a name is only looked for as it is spelled: “bench” in a sentence is no Bench. */
  readonly isPart: boolean;
}
const someone = 'someone';
/** Words of a place's name that are anybody's. */
const common = new Set(['the', 'and', 'place', 'ranch', 'farm', 'home', 'range', 'unit', 'north', 'south', 'east', 'west', 'upper', 'lower']);

/** `A. Reyes, K. Moss and the county agent` as people. */
export const peopleIn = (text: string | undefined): readonly string[] =>
  (text ?? '')
    .split(/[,;\n]|\band\b|&/)
    .map((each) => each.trim())
    .filter((each) => each !== '');

const partsOf = (name: string, instead: string): readonly Hidden[] =>
  name
    .split(/[^\p{L}\p{N}]+/u)
    .filter((part) => part.length >= 3 && /^\p{Lu}/u.test(part) && !common.has(part.toLowerCase()))
    .map((part) => ({ name: part, instead, isPart: true }));

/** What a pasture is called where its name is not told: by its place among those of the place, the same in every visit. */
export const pastureCode = (place: Place, id: string): string => `pasture ${place.pastures.findIndex((each) => each.id === id) + 1}`;

/** Every name that a visit holds, or could hold in its words. */
export function hiddenNames(place: Place, visit: Visit, placeCode: string, hasPastureNames: boolean): readonly Hidden[] {
  const whole = (name: string, instead: string): Hidden => ({ name, instead, isPart: false });
  const people = [...peopleIn(visit.by), ...peopleIn(visit.present), ...visit.steps.flatMap(({ who }) => peopleIn(who))];
  return [
    whole(place.name, placeCode),
    ...partsOf(place.name, placeCode),
    ...people.flatMap((name) => [whole(name, someone), ...partsOf(name, someone)]),
    ...place.water.flatMap(({ name }) => (name === undefined ? [] : [whole(name, 'a water point')])),
    ...(hasPastureNames
      ? []
      : place.pastures.flatMap(({ id, name, paddocks }) => [
          whole(name, pastureCode(place, id)),
          ...paddocks.map((each) => whole(each.name, `a paddock of ${pastureCode(place, id)}`)),
        ])),
  ]
    .filter(({ name }) => name.trim() !== '')
    .toSorted((one, other) => other.name.length - one.name.length);
}

const escaped = (name: string): string => name.trim().replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
/** The same words without the names. */
export const withoutNames = (text: string, hidden: readonly Hidden[]): string =>
  hidden.reduce(
    (now, { name, instead, isPart }) =>
      now.replace(new RegExp(`(?<![\\p{L}\\p{N}])${escaped(name)}(?![\\p{L}\\p{N}])`, isPart ? 'gu' : 'giu'), () => instead),
    text,
  );
