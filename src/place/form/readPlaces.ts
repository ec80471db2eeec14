import type { Place } from '../model/place.ts';
import type { Row } from '../model/row.ts';

/** As the edition with these pages writes it: what it wrote, its schema has passed. Anything else is for the place's own page to read. */
const isOurs = (raw: unknown): raw is Place =>
  typeof raw === 'object' &&
  raw !== null &&
  'v' in raw &&
  raw.v === 1 &&
  ['pastures', 'herd', 'soils', 'water'].every((list) => Array.isArray(Object.entries(raw).find(([key]) => key === list)?.[1]));

/** A line of the record, as this edition writes it. */
const isRowOf =
  (placeId: string) =>
  (raw: unknown): raw is Row =>
    typeof raw === 'object' && raw !== null && 'v' in raw && raw.v === 1 && 'is' in raw && 'placeId' in raw && raw.placeId === placeId;

/** How long a form waits for the browser's store before it opens without. */
const patienceMs = 2000;

/** All that lies in a store. None where there is no database yet, where the browser gives none, or gives it too late. */
function readAll(store: string): Promise<readonly unknown[]> {
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
      const all = db.transaction(store).objectStore(store).getAll();
      all.onerror = none;
      all.onsuccess = () => {
        db.close();
        done(all.result);
      };
    };
  });
  return Promise.race([read, new Promise<readonly unknown[]>((done) => setTimeout(() => done([]), patienceMs))]);
}

/** The places that are kept, to be read and no more: a form needs neither the journal nor the schemas, which weigh more than all the rest. */
export const readPlaces = async (): Promise<readonly Place[]> => (await readAll('places')).filter(isOurs);
/** The record of a place, in the same way. */
export const readRows = async (placeId: string): Promise<readonly Row[]> => (await readAll('rows')).filter(isRowOf(placeId));
