import { useState } from 'preact/hooks';
import { type Photo, photoAddress, photoVersion } from '../model/photo.ts';
import type { Visit } from '../model/visit.ts';
import { photoKind } from '../store/visitKinds.ts';
import { listed } from './edit.ts';
import { FieldsView } from './FieldView.tsx';
import { text } from './fields/field.ts';
import { useKept } from './keptRecords.ts';
import { redraw } from './redraw.ts';
import type { Change } from './session.ts';
import type { PlaceView } from './view.ts';

const mostPhotos = 12;
const wordsField = [text('words', 'What it shows')];

/** Photos of a visit: each drawn anew before it is kept. */
export function Photos({
  view,
  visit,
  onChange,
}: {
  readonly view: PlaceView;
  readonly visit: Visit;
  readonly onChange: (changes: readonly Change[]) => void;
}) {
  const { session, system } = view;
  const [told, setTold] = useState('');
  const list = visit.photos ?? [];
  const kept =
    useKept(
      session,
      photoKind,
      () => true,
      list.map(({ id }) => id),
    ) ?? [];
  const add = async (input: HTMLInputElement): Promise<void> => {
    const files = [...(input.files ?? [])];
    input.value = '';
    const room = mostPhotos - list.length;
    const failed: string[] = [];
    const photos: Photo[] = [];
    for (const file of files.slice(0, room)) {
      try {
        photos.push({ ...session.begun(), v: photoVersion, placeId: visit.placeId, visitId: visit.id, ...(await redraw(file)) });
      } catch {
        failed.push(file.name);
      }
    }
    if (photos.length > 0) {
      await session.store.save(
        photoKind,
        photos.map((after) => ({ before: null, after })),
      );
      onChange([{ path: ['photos'], to: listed([...list, ...photos.map(({ id }) => ({ id }))]) }]);
    }
    const over = files.length > room ? `A visit holds ${mostPhotos} photos; ${files.length - room} more were left out. ` : '';
    setTold(`${over}${failed.length === 0 ? '' : `This device could not read ${failed.join(', ')} as a picture.`}`);
  };
  const take = async (id: string): Promise<void> => {
    const left = list.filter((each) => each.id !== id);
    onChange([{ path: ['photos'], to: left.length === 0 ? undefined : listed(left) }]);
    await session.store.remove(photoKind, id);
  };
  return (
    <>
      <h3>Photos</h3>
      <ul class="visit-photos">
        {list.map((each, index) => {
          const photo = kept.find(({ id }) => id === each.id);
          return (
            <li key={each.id}>
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
              <button type="button" class="quiet" onClick={() => void take(each.id)}>
                Take photo {index + 1} away
              </button>
            </li>
          );
        })}
      </ul>
      {list.length < mostPhotos && (
        <p class="file-field">
          <label for="visit-photos">Add photos</label>
          <small>Drawn anew on this device: where and when they were taken stays out. At most {mostPhotos} a visit.</small>
          <input id="visit-photos" type="file" accept="image/*" multiple onChange={(event) => void add(event.currentTarget)} />
        </p>
      )}
      <p role="status">{told}</p>
    </>
  );
}
