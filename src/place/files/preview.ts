import type { Belongings } from '../model/belongings.ts';
import type { Place } from '../model/place.ts';
import { type Kept, type Standing, standingOf } from '../store/records.ts';

/** One place of a file with what belongs to it, before anything is written. */
export interface Coming extends Belongings {
  readonly place: Place;
  /** What of its record and its visits is not here; nothing where there is none. */
  readonly rowsSay?: string;
  readonly visitsSay?: string;
  readonly standing: Standing;
  /** Ours of the same name, where it is not the same place by its id: somebody must say. */
  readonly namesake?: Place;
  /** Ours of the same id, where both went apart: parts of one name may have been added on both sides. */
  readonly apart?: Place;
  readonly says: string;
  /** Whether it is ticked at first: what would change nothing is not. */
  readonly isPicked: boolean;
}
const words: Readonly<Record<Standing, string>> = {
  new: 'New here.',
  same: 'The same as here.',
  later: 'Changed since it was saved here. It takes the place of what is here.',
  earlier: 'Older than what is here. It changes nothing.',
  both: 'Changed here and in the file. What differs is kept twice, for you to pick.',
};

type Held = Partial<Belongings> & { readonly places: readonly Place[] };
const counted = (count: number, [one, many]: readonly [string, string]): string => `${count.toLocaleString('en-US')} ${count === 1 ? one : many}`;
/** In words, what of a list in a file is new here, changed, or changed on both sides. */
function sayList(
  label: string,
  words: readonly [string, string],
  there: readonly Kept[],
  here: readonly Kept[],
): { readonly say: string; readonly isNews: boolean } | undefined {
  if (there.length === 0) return undefined;
  const byId = new Map(here.map((each) => [each.id, each]));
  const standings = there.map((each) => standingOf(byId.get(each.id), each));
  const many = (...which: readonly Standing[]): number => standings.filter((each) => which.includes(each)).length;
  const parts = [
    { count: many('new'), say: 'new here' },
    { count: many('later'), say: 'changed since' },
    { count: many('both'), say: 'changed here and in the file: what differs is kept twice' },
    { count: many('same', 'earlier'), say: 'here already' },
  ].filter(({ count }) => count > 0);
  return {
    say: `${label}: ${counted(there.length, words)}. ${parts.map(({ count, say }) => `${count.toLocaleString('en-US')} ${say}`).join(', ')}.`,
    isNews: standings.some((each) => each !== 'same' && each !== 'earlier'),
  };
}

/** What a file would bring, place by place, each with its record and its visits. */
export function previewOf(there: Held, here: Held): readonly Coming[] {
  return there.places.map((place) => {
    const ours = here.places.find(({ id }) => id === place.id);
    const standing = standingOf(ours, place);
    const namesake = standing === 'new' ? here.places.find(({ name }) => name.trim().toLowerCase() === place.name.trim().toLowerCase()) : undefined;
    const of = <T extends { readonly placeId: string }>(list: readonly T[] = []): readonly T[] => list.filter(({ placeId }) => placeId === place.id);
    const kept: Belongings = { rows: of(there.rows), visits: of(there.visits), results: of(there.results), notes: of(there.notes) };
    const rows = sayList('Its record', ['line', 'lines'], kept.rows, here.rows ?? []);
    const visits = sayList('Visits', ['visit', 'visits'], kept.visits, here.visits ?? []);
    const ofVisits = [sayList('', ['', ''], kept.results, here.results ?? []), sayList('', ['', ''], kept.notes, here.notes ?? [])];
    const isNews = [rows, visits, ...ofVisits].some((each) => each?.isNews === true);
    return {
      place,
      ...kept,
      standing,
      ...(rows === undefined ? {} : { rowsSay: rows.say }),
      ...(visits === undefined ? {} : { visitsSay: visits.say }),
      ...(namesake === undefined ? {} : { namesake }),
      ...(ours === undefined || standing !== 'both' ? {} : { apart: ours }),
      says: namesake === undefined ? words[standing] : 'A place of this name is here already. Is it another place, or the same?',
      isPicked: namesake === undefined && ((standing !== 'same' && standing !== 'earlier') || isNews),
    };
  });
}
