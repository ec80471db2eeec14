import type { Place } from '../model/place.ts';
import type { Row } from '../model/row.ts';
import { type Standing, standingOf } from '../store/records.ts';

/** One place of a file, before anything is written. */
export interface Coming {
  readonly place: Place;
  /** Its record in the file. */
  readonly rows: readonly Row[];
  /** What of that is not here; nothing where there is no record. */
  readonly rowsSay?: string;
  readonly standing: Standing;
  /** Ours of the same name, where it is not the same place by its id: somebody must say. */
  readonly namesake?: Place;
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

interface Held {
  readonly places: readonly Place[];
  readonly rows: readonly Row[];
}
const lines = (count: number): string => `${count.toLocaleString('en-US')} ${count === 1 ? 'line' : 'lines'}`;
/** In words, what of a record in a file is new here, changed, or changed on both sides. */
function sayRows(rows: readonly Row[], here: ReadonlyMap<string, Row>): { readonly say: string; readonly isNews: boolean } {
  const standings = rows.map((row) => standingOf(here.get(row.id), row));
  const many = (...which: readonly Standing[]): number => standings.filter((each) => which.includes(each)).length;
  const parts = [
    { count: many('new'), say: 'new here' },
    { count: many('later'), say: 'changed since' },
    { count: many('both'), say: 'changed here and in the file: what differs is kept twice' },
    { count: many('same', 'earlier'), say: 'here already' },
  ].filter(({ count }) => count > 0);
  return {
    say: `Its record: ${lines(rows.length)}. ${parts.map(({ count, say }) => `${count.toLocaleString('en-US')} ${say}`).join(', ')}.`,
    isNews: standings.some((each) => each !== 'same' && each !== 'earlier'),
  };
}

/** What a file would bring, place by place, each with its record. */
export function previewOf(there: Held, here: Held): readonly Coming[] {
  const rowsHere = new Map(here.rows.map((row) => [row.id, row]));
  return there.places.map((place) => {
    const standing = standingOf(
      here.places.find(({ id }) => id === place.id),
      place,
    );
    const namesake = standing === 'new' ? here.places.find(({ name }) => name.trim().toLowerCase() === place.name.trim().toLowerCase()) : undefined;
    const rows = there.rows.filter(({ placeId }) => placeId === place.id);
    const said = rows.length === 0 ? undefined : sayRows(rows, rowsHere);
    return {
      place,
      rows,
      standing,
      ...(said === undefined ? {} : { rowsSay: said.say }),
      ...(namesake === undefined ? {} : { namesake }),
      says: namesake === undefined ? words[standing] : 'A place of this name is here already. Is it another place, or the same?',
      isPicked: namesake === undefined && ((standing !== 'same' && standing !== 'earlier') || said?.isNews === true),
    };
  });
}
