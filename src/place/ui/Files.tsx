import { useEffect, useState } from 'preact/hooks';
import { localDay } from '../../../calculators/units/days.ts';
import { printDay } from '../../../calculators/units/printQuantity.ts';
import { faultOfSize } from '../files/limits.ts';
import type { Pictures } from '../files/pictures.ts';
import type { FileRead } from '../files/read.ts';
import { textOfRaw } from '../files/textOfRaw.ts';
import type { Belongings } from '../model/belongings.ts';
import type { Place } from '../model/place.ts';
import { type Room, roomOf } from '../store/storageState.ts';
import { download } from './download.ts';
import { lazily } from './lazily.tsx';
import { Fold } from './Part.tsx';
import type { PreviewProps } from './Preview.tsx';
import { sizeWords } from './sizeWords.ts';
import { today } from './today.ts';
import type { PlaceView, View } from './view.ts';

const PhotoRoom = lazily<PlaceView>(async () => (await import('./PhotoRoom.tsx')).PhotoRoom);
// What reads and writes files knows every schema: it comes with the first file.
const Preview = lazily<PreviewProps>(async () => (await import('./Preview.tsx')).Preview);
const mostBytes = 100 * 1024 * 1024;

function SaveFile(view: View) {
  const { session } = view;
  const { place } = session;
  const own = session.places.filter(({ isDemo }) => isDemo !== true);
  const [said, setSaid] = useState('');
  const save = (places: readonly Place[]): void => {
    void import('./saveFile.ts')
      .then(({ saveFile }) => saveFile(view, places))
      .then(() => setSaid('Saved among your downloads. Move it where it is safe from a lost phone.'));
  };
  if (place === undefined) return <p>Nothing is open, so there is nothing to save.</p>;
  const last = session.backups.lastFile(place.id);
  return (
    <>
      <p>{last === undefined ? `${place.name} was never saved as a file on this device.` : `Last saved as a file: ${printDay(localDay(last))}.`}</p>
      <p>
        <button type="button" class="wide-button" onClick={() => void session.flush().then(() => save(session.place ? [session.place] : []))}>
          Save {place.name} as a file
        </button>
      </p>
      {own.length > 1 && (
        <p>
          <button type="button" onClick={() => void session.flush().then(() => save(session.places.filter(({ isDemo }) => isDemo !== true)))}>
            Save all {own.length} places in one file
          </button>
        </p>
      )}
      <p role="status">{said}</p>
    </>
  );
}

/** A file of a place, or a zip of one with its photos. */
async function readPicked(file: File): Promise<Picked> {
  const [{ readFile }, bytes] = await Promise.all([import('../files/read.ts'), file.arrayBuffer().then((buffer) => new Uint8Array(buffer))]);
  // Every zip begins with these two letters, whatever it is called.
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) return readFile(await file.text());
  const { readZip } = await import('../files/zip.ts');
  const zip = readZip(bytes);
  if (zip.is === 'refused') return zip;
  const read = readFile(zip.text);
  return read.is === 'read' ? { ...read, pictures: zip.pictures } : read;
}
type Picked = FileRead & { readonly pictures?: Pictures };

function OpenFile(view: View) {
  const [read, setRead] = useState<Picked | undefined>(undefined);
  const [keptHere, setKeptHere] = useState<Partial<Belongings>>({});
  const open = async (input: HTMLInputElement): Promise<void> => {
    const file = input.files?.[0];
    if (file === undefined) return;
    const fault = file.size > mostBytes ? faultOfSize(file.size) : undefined;
    try {
      const found = fault === undefined ? await readPicked(file) : { is: 'refused' as const, say: fault };
      if (found.is === 'read') setKeptHere(await view.session.belongingsOf(view.session.places));
      setRead(found);
    } catch {
      setRead({ is: 'refused', say: 'This device could not read the file. Nothing was changed.' });
    }
    // The same file can be chosen again.
    input.value = '';
  };
  return (
    <>
      <p>Nothing is written before you have seen what is in it.</p>
      <p class="file-field">
        <label for="open-file">A file of a place</label>
        <input id="open-file" type="file" accept=".json,.zip,application/json,application/zip" onChange={(event) => void open(event.currentTarget)} />
      </p>
      {read?.is === 'refused' && (
        <p class="problem" role="alert">
          {read.say}
        </p>
      )}
      {read?.is === 'read' && (
        <Preview key={read.savedAt} view={view} read={read} pictures={read.pictures} keptHere={keptHere} onDone={() => setRead(undefined)} />
      )}
    </>
  );
}

function SetAside(view: View) {
  const { session } = view;
  const [saved, setSaved] = useState<ReadonlySet<string>>(new Set());
  if (session.aside.length === 0 && session.newer.length === 0) return null;
  return (
    <>
      <h3>Set aside</h3>
      <p>This could not be opened here. It lies as it was found; save it as a file, so that somebody can look at it.</p>
      <ul class="kept-places">
        {session.aside.map(({ id, why, raw }) => (
          <li key={id}>
            <span>{why}</span>
            <button
              type="button"
              onClick={() => {
                download(`holdwater-aside-${today(view)}.json`, textOfRaw(raw));
                setSaved(new Set([...saved, id]));
              }}
            >
              Save it as a file
            </button>
            {saved.has(id) && (
              <button type="button" onClick={() => void session.dropAside(id)}>
                Take it off this list
              </button>
            )}
          </li>
        ))}
        {session.newer.map((raw, index) => (
          <li key={`newer-${String(index)}`}>
            <span>Made by a newer copy of these pages. It is not opened here, and not changed.</span>
            <button type="button" onClick={() => download(`holdwater-newer-${today(view)}.json`, textOfRaw(raw))}>
              Save it as a file
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function WhereItLies({ session }: View) {
  const [room, setRoom] = useState<Room | undefined>(undefined);
  useEffect(() => {
    void roomOf(navigator.storage, false).then(setRoom);
  }, []);
  const isFromDisk = location.protocol === 'file:';
  if (session.state.is === 'memory')
    return <p>This window keeps nothing. What you type is in it as long as it is open, and in the file that you save.</p>;
  return (
    <>
      <p>
        It lies in this browser, on this device, and nowhere else: no copy goes to anybody.
        {room?.usedBytes !== undefined && ` All that these pages keep here takes ${sizeWords(room.usedBytes)}, the pages themselves included.`}
      </p>
      <p>
        {room?.isPersisted === true
          ? 'The browser has promised not to clear it by itself. Clearing its data by hand takes it away, and so does a lost device.'
          : 'The browser has not promised to keep it: it may clear it when the device runs short of room, or when you have not been here for some weeks. Save a file.'}
      </p>
      {isFromDisk && (
        <p>
          These pages are open from a folder. In some browsers any other page that is opened from this disk could read what is kept.{' '}
          <a href="?keep-nothing#/files">Keep nothing here, and work from the file</a>.
        </p>
      )}
    </>
  );
}

export function Files(view: View) {
  const { place } = view.session;
  return (
    <>
      <h3>Save it</h3>
      <SaveFile {...view} />
      <h3>Open a file</h3>
      <OpenFile {...view} />
      <SetAside {...view} />
      <h3>Where it lies</h3>
      <WhereItLies {...view} />
      {place && (
        <Fold title="Photos and the room they take" says={place.name} isPrinting={false}>
          {() => <PhotoRoom {...view} place={place} />}
        </Fold>
      )}
    </>
  );
}
