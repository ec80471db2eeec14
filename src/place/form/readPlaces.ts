import type { Place } from '../model/place.ts';

/** As the edition with these pages writes it: what it wrote, its schema has passed. Anything else is for the place's own page to read. */
const isOurs = (raw: unknown): raw is Place =>
  typeof raw === 'object' &&
  raw !== null &&
  'v' in raw &&
  raw.v === 1 &&
  ['pastures', 'herd', 'soils', 'water'].every((list) => Array.isArray(Object.entries(raw).find(([key]) => key === list)?.[1]));

/** How long a form waits for the browser's store before it opens without. */
const patienceMs = 2000;

/**
 * The places that are kept, to be read and no more: a form needs neither the journal nor the schemas, which weigh more than all the rest. None where there
 * is no database yet, where the browser gives none, or gives it too late.
 */
export function readPlaces(): Promise<readonly Place[]> {
  const read = new Promise<readonly Place[]>((done) => {
    const none = () => done([]);
    const asked = indexedDB.open('holdwater', 1);
    // There was none: leave nothing behind.
    asked.onupgradeneeded = () => asked.transaction?.abort();
    asked.onerror = none;
    asked.onblocked = none;
    asked.onsuccess = () => {
      const db = asked.result;
      const all = db.transaction('places').objectStore('places').getAll();
      all.onerror = none;
      all.onsuccess = () => {
        const found: readonly unknown[] = all.result;
        db.close();
        done(found.filter(isOurs));
      };
    };
  });
  return Promise.race([read, new Promise<readonly Place[]>((done) => setTimeout(() => done([]), patienceMs))]);
}
