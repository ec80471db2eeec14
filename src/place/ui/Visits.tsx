import { useState } from 'preact/hooks';
import type { Visit } from '../model/visit.ts';
import { noteKind, photoKind, resultKind, visitKind } from '../store/visitKinds.ts';
import { pastureNames, visitDay } from '../visit/visitWords.ts';
import { useKept } from './keptRecords.ts';
import type { PlaceView } from './view.ts';

/** Newest first. */
const newestFirst = (one: Visit, other: Visit): number => other.day.localeCompare(one.day) || other.changedAt.localeCompare(one.changedAt);
const counted = (count: number): string => (count === 0 ? 'no calculation yet' : `${count} ${count === 1 ? 'calculation' : 'calculations'}`);

/** All visits of the place, and two of them side by side. */
export function Visits({ session, place }: PlaceView) {
  const visits = useKept(session, visitKind, ({ placeId }) => placeId === place.id);
  const [picked, setPicked] = useState<readonly string[]>([]);
  if (visits === undefined) return null;
  const [one, other] = visits.filter(({ id }) => picked.includes(id)).toSorted((a, b) => a.day.localeCompare(b.day));
  return (
    <>
      <p>
        <a class="big-link" href="#/visit/new">
          New visit
        </a>
      </p>
      {visits.length === 0 && (
        <p class="none-yet">No visit yet. A visit holds what was seen and said on a day, what was worked out, and who does what by when.</p>
      )}
      {visits.length > 1 && (
        <p class="two-visits" role="status">
          {one && other ? (
            <a href={`#/compare/${one.id}/${other.id}`}>
              Set {visitDay(one, visits)} and {visitDay(other, visits)} side by side
            </a>
          ) : (
            'Tick two visits to set them side by side.'
          )}
        </p>
      )}
      <ul class="kept-places">
        {visits.toSorted(newestFirst).map((visit) => (
          <li key={visit.id}>
            {visits.length > 1 && (
              <label class="place-tick">
                <input
                  type="checkbox"
                  checked={picked.includes(visit.id)}
                  onChange={(event) =>
                    setPicked(event.currentTarget.checked ? [...picked, visit.id].slice(-2) : picked.filter((id) => id !== visit.id))
                  }
                />
                <span class="unseen">Set {visitDay(visit, visits)} beside another</span>
              </label>
            )}
            <a class="visit-link" href={`#/visit/${visit.id}`}>
              {visitDay(visit, visits)}
            </a>
            <span>
              {[pastureNames(place, visit.pastureIds), counted(visit.results.length), visit.by ?? ''].filter((each) => each !== '').join(', ')}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

/** Visit, results and note, in one transaction. */
export const removeVisit = ({ session }: Pick<PlaceView, 'session'>, visit: Visit): Promise<void> =>
  session.store.remove(visitKind, visit.id, [
    ...visit.results.map(({ id }) => ({ store: resultKind.store, id })),
    { store: noteKind.store, id: visit.id },
    ...(visit.photos ?? []).map(({ id }) => ({ store: photoKind.store, id })),
  ]);
