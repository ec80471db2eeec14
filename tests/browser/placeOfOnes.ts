// A place as one of the walks finds it kept, put straight into the browser's own database.
import type { Page } from '@playwright/test';
import type { Place } from '../../src/place/model/place.ts';
import type { Row } from '../../src/place/model/row.ts';
import { storeNames } from '../../src/place/store/backend.ts';
import { databaseVersion } from '../../src/place/store/idbBackend.ts';

export const twoBench: Place = {
  id: 'two-bench',
  rev: 1,
  past: ['1-aaaaaa'],
  changedBy: 'a test',
  changedAt: '2027-06-01T08:00:00.000Z',
  v: 3,
  name: 'Two Bench place',
  rainClass: 'middle',
  season: { turnInDay: '04-20', endDay: '10-31', hayFromDay: '11-01' },
  soils: [],
  pastures: [
    { id: 'low', name: 'Low bench', areaAc: 85, stopHeightIn: 4, stand: 'mixed-pasture', condition: 'good', isCounted: true, paddocks: [] },
    { id: 'high', name: 'High bench', areaAc: 120, isCounted: true, paddocks: [] },
  ],
  herd: [
    { id: 'cows', kind: 'cow', countHead: 45, weightLb: 1250, birthsDay: '03-10' },
    { id: 'bulls', kind: 'bull', countHead: 2, weightLb: 1900 },
  ],
  hay: { stacks: [] },
  prices: { hayLikelyUsdPerTon: 165, hayLowUsdPerTon: 120, hayHighUsdPerTon: 220 },
  water: [],
};

/** Runs in a page of the site: writes a place that was told as JSON, and opens it. */
export async function putPlace(told: string): Promise<void> {
  const { place, isOpen, names, version }: ReturnType<typeof toldPlace> = JSON.parse(told);
  await new Promise<void>((done, fail) => {
    const asked = indexedDB.open('holdwater', version);
    asked.onupgradeneeded = () => {
      for (const name of names) if (!asked.result.objectStoreNames.contains(name)) asked.result.createObjectStore(name, { keyPath: 'id' });
    };
    asked.onerror = () => fail(asked.error);
    asked.onsuccess = () => {
      const tx = asked.result.transaction('places', 'readwrite');
      tx.objectStore('places').put(place);
      tx.oncomplete = () => {
        asked.result.close();
        done();
      };
      tx.onabort = () => fail(tx.error);
    };
  });
  if (isOpen) localStorage.setItem('holdwater-open', place.id);
}
/** What it is told. */
export const toldPlace = (place: Place, isOpen = true) => ({ place, isOpen, names: storeNames, version: databaseVersion });
/** Writes it and opens it, on a page of the site. */
export const keepPlace = (page: Page, place: Place, isOpen = true): Promise<void> =>
  page.evaluate(putPlace, JSON.stringify(toldPlace(place, isOpen)));
/** Lines of its record, put there as another window would have. */
export const keepRows = (page: Page, rows: readonly Row[]): Promise<void> =>
  page.evaluate(
    (records) =>
      new Promise<void>((done, fail) => {
        const asked = indexedDB.open('holdwater');
        asked.onerror = () => fail(asked.error);
        asked.onsuccess = () => {
          const tx = asked.result.transaction('rows', 'readwrite');
          for (const record of records) tx.objectStore('rows').put(record);
          tx.oncomplete = () => {
            asked.result.close();
            done();
          };
          tx.onabort = () => fail(tx.error);
        };
      }),
    rows,
  );
/** Its record, as it lies there. */
export const keptRows = (page: Page): Promise<readonly Row[]> =>
  page.evaluate(
    () =>
      new Promise<Row[]>((done, fail) => {
        const asked = indexedDB.open('holdwater');
        asked.onerror = () => fail(asked.error);
        asked.onsuccess = () => {
          const all = asked.result.transaction('rows').objectStore('rows').getAll();
          all.onsuccess = () => {
            asked.result.close();
            done(all.result);
          };
        };
      }),
  );
/** What is kept, as it lies there. */
export const keptPlaces = (page: Page): Promise<readonly Place[]> =>
  page.evaluate(
    () =>
      new Promise<Place[]>((done, fail) => {
        const asked = indexedDB.open('holdwater');
        asked.onerror = () => fail(asked.error);
        asked.onsuccess = () => {
          const all = asked.result.transaction('places').objectStore('places').getAll();
          all.onsuccess = () => {
            asked.result.close();
            done(all.result);
          };
        };
      }),
  );
