import { useState } from 'preact/hooks';
import type { Visit } from '../model/visit.ts';
import { photoKind, visitKind } from '../store/visitKinds.ts';
import { visitDay } from '../visit/visitWords.ts';
import { useKept } from './keptRecords.ts';
import { sizeWords } from './sizeWords.ts';
import type { PlaceView } from './view.ts';

const counted = (count: number): string => `${count} ${count === 1 ? 'photo' : 'photos'}`;

/** What photos of the open place take of the device, visit by visit, with the way to be rid of them: where it is full they are most of it. */
export function PhotoRoom({ session, place }: PlaceView) {
  const ofPlace = ({ placeId }: { readonly placeId: string }): boolean => placeId === place.id;
  const visits = useKept(session, visitKind, ofPlace);
  const photos = useKept(session, photoKind, ofPlace);
  const [asked, setAsked] = useState<string | undefined>(undefined);
  // What this window takes away, only others are told of.
  const [gone, setGone] = useState<ReadonlySet<string>>(new Set());
  if (visits === undefined || photos === undefined) return null;
  const photosOf = ({ id }: Visit) => photos.filter((photo) => photo.visitId === id && !gone.has(photo.id));
  const withAny = visits.filter((visit) => photosOf(visit).length > 0).toSorted((one, other) => other.day.localeCompare(one.day));
  if (withAny.length === 0) return <p>No visit of {place.name} has photos.</p>;
  const take = async (visit: Visit): Promise<void> => {
    setAsked(undefined);
    const own = photosOf(visit).map(({ id }) => id);
    const [first, ...others] = own.map((id) => ({ store: photoKind.store, id }));
    // Room first: on a device that is full nothing could be written before.
    if (first !== undefined) await session.store.remove(photoKind, first.id, others);
    const { photos: _, ...after } = visit;
    await session.store.save(visitKind, [{ before: visit, after }]);
    setGone(new Set([...gone, ...own]));
  };
  return (
    <ul class="kept-places">
      {withAny.map((visit) => {
        const own = photosOf(visit);
        // Four letters hold three bytes.
        const bytes = own.reduce((sum, { data }) => sum + data.length * 0.75, 0);
        const says = `${counted(own.length)}, ${sizeWords(bytes)}`;
        return (
          <li key={visit.id}>
            <a href={`#/visit/${visit.id}`}>Visit of {visitDay(visit, visits)}</a> <span>{says}</span>
            {asked === visit.id ? (
              <>
                <span role="alert">Nobody can bring them back but from a file that was saved.</span>
                <button type="button" onClick={() => void take(visit)}>
                  Take {counted(own.length)} away
                </button>
                <button type="button" class="quiet" onClick={() => setAsked(undefined)}>
                  Keep them
                </button>
              </>
            ) : (
              <button type="button" onClick={() => setAsked(visit.id)}>
                Take them away <span class="unseen">, visit of {visitDay(visit, visits)}</span>
              </button>
            )}
          </li>
        );
      })}
    </ul>
  );
}
