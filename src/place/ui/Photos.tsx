import { Fragment } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { type Photo, photoAddress, photoVersion } from '../model/photo.ts';
import type { Visit } from '../model/visit.ts';
import { photoKind } from '../store/visitKinds.ts';
import { listed } from './edit.ts';
import { FieldsView } from './FieldView.tsx';
import { text } from './fields/field.ts';
import { useKept } from './keptRecords.ts';
import { redraw } from './redraw.ts';
import type { Change } from './session.ts';
import { PutBack, useTaken } from './taken.tsx';
import type { PlaceView } from './view.ts';

const mostPhotos = 12;
const wordsField = [text('words', 'What it shows')];

/** Photos of a visit: each drawn anew before it is kept. */
export function Photos({
  view,
  visit,
  now,
  onChange,
}: {
  readonly view: PlaceView;
  readonly visit: Visit;
  /** The visit as it stands once a photo is drawn. */
  readonly now: () => Visit;
  readonly onChange: (changes: readonly Change[]) => void;
}) {
  const { session, system } = view;
  const [told, setTold] = useState('');
  const list = visit.photos ?? [];
  const listNow = () => now().photos ?? [];
  const change = (photos: readonly (typeof list)[number][]): void =>
    onChange([{ path: ['photos'], to: photos.length === 0 ? undefined : listed(photos) }]);
  // A photo goes out of the store on leaving, not at the tap: until then it can come back.
  const taken = useTaken(listNow, change, (id) => void session.store.remove(photoKind, id));
  // One lot is drawn after the other, each into what the ones before it left.
  const drawing = useRef(Promise.resolve());
  const kept =
    useKept(
      session,
      photoKind,
      () => true,
      list.map(({ id }) => id),
    ) ?? [];
  const add = async (files: readonly File[]): Promise<void> => {
    const room = mostPhotos - listNow().length;
    const failed: string[] = [];
    const photos: Photo[] = [];
    for (const file of files.slice(0, room)) {
      try {
        photos.push({ ...session.newHead(), v: photoVersion, placeId: visit.placeId, visitId: visit.id, ...(await redraw(file)) });
      } catch {
        failed.push(file.name);
      }
    }
    if (photos.length > 0) {
      await session.store.save(
        photoKind,
        photos.map((after) => ({ before: null, after })),
      );
      change([...listNow(), ...photos.map(({ id }) => ({ id }))]);
    }
    const over = files.length > room ? `A visit holds ${mostPhotos} photos; ${files.length - room} more were left out. ` : '';
    setTold(`${over}${failed.length === 0 ? '' : `This device could not read ${failed.join(', ')} as a picture.`}`);
  };
  const backs = (index: number) =>
    taken.backs(index).map((each) => (
      <li key={each.item.id}>
        <PutBack taken={each} from={taken} />
      </li>
    ));
  return (
    <>
      <h3>Photos</h3>
      <ul class="visit-photos">
        {list.map((each, index) => {
          const photo = kept.find(({ id }) => id === each.id);
          return (
            <Fragment key={each.id}>
              {backs(index)}
              <li>
                {photo ? <img src={photoAddress(photo)} alt={each.words ?? `Photo ${index + 1}`} /> : <p>This photo is not on this device.</p>}
                <FieldsView
                  id={`photo-${each.id}`}
                  record={each}
                  fields={wordsField}
                  system={system}
                  of={`Photo ${index + 1}`}
                  path={['photos', each.id]}
                  onChange={(changes) => onChange(changes.filter(({ path }) => path[2] === 'words'))}
                />
                <button
                  type="button"
                  class="quiet"
                  onClick={() => {
                    setTold('');
                    taken.take(each, `Photo ${index + 1}`);
                  }}
                >
                  Take photo {index + 1} away
                </button>
              </li>
            </Fragment>
          );
        })}
        {backs(list.length)}
      </ul>
      {list.length < mostPhotos && (
        <p class="file-field">
          <label for="visit-photos">Add photos</label>
          <small>Drawn anew on this device: where and when they were taken stays out. At most {mostPhotos} a visit.</small>
          <input
            id="visit-photos"
            type="file"
            accept="image/*"
            multiple
            onChange={({ currentTarget: input }) => {
              const files = [...(input.files ?? [])];
              input.value = '';
              drawing.current = drawing.current.then(() => add(files));
            }}
          />
        </p>
      )}
      <p role="status">{told}</p>
    </>
  );
}
