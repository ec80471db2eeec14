import type { Place } from '../model/place.ts';
import { type Standing, standingOf } from '../store/records.ts';

/** One place of a file, before anything is written. */
export interface Coming {
  readonly place: Place;
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

/** What a file would bring, place by place. */
export const previewOf = (there: readonly Place[], here: readonly Place[]): readonly Coming[] =>
  there.map((place) => {
    const standing = standingOf(
      here.find(({ id }) => id === place.id),
      place,
    );
    const namesake = standing === 'new' ? here.find(({ name }) => name.trim().toLowerCase() === place.name.trim().toLowerCase()) : undefined;
    return {
      place,
      standing,
      ...(namesake === undefined ? {} : { namesake }),
      says: namesake === undefined ? words[standing] : 'A place of this name is here already. Is it another place, or the same?',
      isPicked: standing !== 'same' && standing !== 'earlier' && namesake === undefined,
    };
  });
