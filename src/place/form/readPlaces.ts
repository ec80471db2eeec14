import type { Place } from '../model/place.ts';
import type { Row } from '../model/row.ts';

/** As this edition or an older one wrote it: what they wrote, their schema has passed, and what the versions differ in no form reads. Anything else is for the place's own page to read. */
const isOurs = (raw: unknown): raw is Place =>
  typeof raw === 'object' &&
  raw !== null &&
  'v' in raw &&
  (raw.v === 1 || raw.v === 2 || raw.v === 3) &&
  ['pastures', 'herd', 'soils', 'water'].every((list) => Array.isArray(Object.entries(raw).find(([key]) => key === list)?.[1]));

/** Something that belongs to a place, as this edition writes it. */
export const isOf =
  <T extends { readonly v: number }>(is: (raw: object) => boolean) =>
  (raw: unknown): raw is T =>
    typeof raw === 'object' && raw !== null && 'v' in raw && raw.v === 1 && is(raw);
export const isAt =
  (placeId: string) =>
  (raw: object): boolean =>
    'placeId' in raw && raw.placeId === placeId;

/** How long a form waits for the browser's store before it opens without. */
const patienceMs = 2000;

/** All that lies in a store, or what has these ids. None where there is no database yet, where the browser gives none, or gives it too late. */
export function readFrom(store: string, ids?: readonly string[]): Promise<readonly unknown[]> {
  const read = new Promise<readonly unknown[]>((done) => {
    const none = () => done([]);
    // Of whatever version it is: a reader changes none, and a form need not wait until the page of the place has brought an older one up.
    const asked = indexedDB.open('holdwater');
    // There was none: leave nothing behind.
    asked.onupgradeneeded = () => asked.transaction?.abort();
    asked.onerror = none;
    asked.onblocked = none;
    asked.onsuccess = () => {
      const db = asked.result;
      if (!db.objectStoreNames.contains(store)) {
        db.close();
        none();
        return;
      }
      const from = db.transaction(store);
      const wanted = ids === undefined ? [from.objectStore(store).getAll()] : ids.map((id) => from.objectStore(store).get(id));
      from.onerror = none;
      from.oncomplete = () => {
        db.close();
        done(wanted.flatMap(({ result }): unknown => result));
      };
    };
  });
  return Promise.race([read, new Promise<readonly unknown[]>((done) => setTimeout(() => done([]), patienceMs))]);
}

/** The places that are kept, to be read and no more: a form needs neither the journal nor the schemas, which weigh more than all the rest. */
export const readPlaces = async (): Promise<readonly Place[]> => (await readFrom('places')).filter(isOurs);
/** The record of a place, in the same way. */
export const readRows = async (placeId: string): Promise<readonly Row[]> =>
  (await readFrom('rows')).filter(isOf<Row>((raw) => 'is' in raw && isAt(placeId)(raw)));
