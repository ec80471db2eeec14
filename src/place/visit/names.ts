import type { Place } from '../model/place.ts';
import type { Visit } from '../model/visit.ts';

/** A name, and what the office's copy says in its place. */
interface Hidden {
  readonly name: string;
  readonly instead: string;
}
const someone = 'someone';
/** Words in names that are anybody's: by one of them alone nobody finds a place. */
const common = new Set(
  'the and place ranch farm home range unit north south east west upper lower well creek pond tank spring house barn lot hill bottom'.split(' '),
);

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
    .map((part) => ({ name: part, instead }));

/** What a pasture is called where its name is not told: by its place among those of the place, the same in every visit. */
export const pastureCode = (place: Place, id: string): string => `pasture ${place.pastures.findIndex((each) => each.id === id) + 1}`;

/** A number, a letter and a word of every day name nothing outside the place, and would take words and figures of their own out with them. */
const isTelling = (name: string): boolean => (name.match(/\p{L}/gu)?.length ?? 0) >= 2 && !common.has(name.trim().toLowerCase());

/** What any pasture that was taken away since is called there. */
export const takenAwayCode = 'a pasture that was taken away';

/** Every name that a visit holds, or could hold in its words. */
export function hiddenNames(place: Place, visit: Visit, placeCode: string, hasPastureNames: boolean): readonly Hidden[] {
  const people = [...peopleIn(visit.by), ...peopleIn(visit.present), ...visit.steps.flatMap(({ who }) => peopleIn(who))];
  return [
    { name: place.name, instead: placeCode },
    ...partsOf(place.name, placeCode),
    ...people.flatMap((name) => [{ name, instead: someone }, ...partsOf(name, someone)]),
    ...place.water.flatMap(({ name }) => (name === undefined ? [] : [{ name, instead: 'a water point' }])),
    ...(hasPastureNames
      ? []
      : place.pastures.flatMap(({ id, name, paddocks }) => [
          { name, instead: pastureCode(place, id) },
          ...paddocks.map((each) => ({ name: each.name, instead: `a paddock of ${pastureCode(place, id)}` })),
        ])),
    ...(hasPastureNames ? [] : (place.pasturesTakenAway ?? []).map(({ name }) => ({ name, instead: takenAwayCode }))),
  ]
    .filter(({ name }) => isTelling(name))
    .toSorted((one, other) => other.name.length - one.name.length);
}

const escaped = (name: string): string => name.trim().replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
/** What ends before a word that begins a sentence or a line. */
const beginsSentence = /(?:^|[.!?]["”’)]*\s+|\n\s*(?:[-*•]\s+)?)$/u;
const withCapital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
/**
 * What somebody typed, without the names. One word is only looked for as it is spelled: “will” in a sentence is no Will. An article before a name goes with
 * it, for what stands instead has its own or takes none, and begins a sentence as the name did.
 */
export const withoutNames = (text: string, hidden: readonly Hidden[]): string =>
  hidden.reduce((now, { name, instead }) => {
    const found = new RegExp(
      `(?<![\\p{L}\\p{N}])(?:(?:[Tt]he|[Aa]n?)\\s+)?${escaped(name)}(?![\\p{L}\\p{N}])`,
      /\s/.test(name.trim()) ? 'giu' : 'gu',
    );
    return now.replace(found, (_, at: number) => (beginsSentence.test(now.slice(0, at)) ? withCapital(instead) : instead));
  }, text);
