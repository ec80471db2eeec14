import { type Note, noteVersion } from '../model/note.ts';
import { type Visit, visitVersion } from '../model/visit.ts';

/** What a new record begins with: its id and its first revision. */
export type Begun = Pick<Visit, 'id' | 'rev' | 'past' | 'changedBy' | 'changedAt'>;

export const newVisit = (begun: Begun, placeId: string, day: string, by: string | undefined): Visit => ({
  ...begun,
  v: visitVersion,
  placeId,
  day,
  ...(by === undefined ? {} : { by }),
  pastureIds: [],
  steps: [],
  results: [],
});
/** Nothing was done in it yet: it can be the one that somebody begins. */
export const isUntouched = (visit: Visit): boolean => {
  const { pastureIds, steps, results, photos, ground, present, spots, seen, said, nextDay, typed, clash } = visit;
  return (
    [pastureIds, steps, results].every(({ length }) => length === 0) &&
    [photos, ground, present, spots, seen, said, nextDay, typed, clash].every((each) => each === undefined)
  );
};
export const newNote = (begun: Begun, visit: Pick<Visit, 'id' | 'placeId'>, day: string): Note => ({
  ...begun,
  id: visit.id,
  v: noteVersion,
  placeId: visit.placeId,
  blocks: [],
  editedDay: day,
});
