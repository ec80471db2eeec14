import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, vi } from 'vitest';
import type { Place } from '../../src/place/model/place.ts';
import { placeKind } from '../../src/place/store/kinds.ts';
import { openStore } from '../../src/place/store/openStore.ts';
import type { Store } from '../../src/place/store/store.ts';
import { texts } from './texts.ts';

// What tests of the store do there again and again, over a database in memory.

/** What stands for `localStorage`. */
export const here = { local: texts() };
const opened: Store[] = [];
export const closeAll = (): void => {
  for (const store of opened.splice(0)) store.close();
};
/** Each test begins in a browser where nothing was kept. */
export function anewForEach(): void {
  beforeEach(() => {
    globalThis.indexedDB = new IDBFactory();
    here.local = texts();
  });
  afterEach(() => {
    closeAll();
    vi.restoreAllMocks();
    vi.useRealTimers();
  });
}
export const open = async (by = 'first window', more: { readonly now?: () => Date; readonly patienceMs?: number } = {}): Promise<Store> => {
  const store = await openStore({ by, texts: here.local, ...more });
  opened.push(store);
  return store;
};
export const places = async (store: Store): Promise<readonly Place[]> => (await store.read(placeKind)).records;
export const one = async (store: Store): Promise<Place> => {
  const [place] = await places(store);
  if (place === undefined) throw new RangeError('no place is kept');
  return place;
};
export const save = async (store: Store, before: Place | null, after: Place) => {
  const [saved] = await store.save(placeKind, [{ before, after }]);
  if (saved === undefined) throw new RangeError('nothing was saved');
  return saved;
};
/** What lies in the database, past all of our own reading. */
export async function raw(write?: (store: IDBObjectStore) => void, name: 'places' | 'aside' = 'places'): Promise<readonly unknown[]> {
  const db: IDBDatabase = await new Promise((done, fail) => {
    const request = indexedDB.open('holdwater');
    request.onsuccess = () => done(request.result);
    request.onerror = () => fail(request.error);
  });
  const all: readonly unknown[] = await new Promise((done, fail) => {
    const tx = db.transaction(name, 'readwrite');
    write?.(tx.objectStore(name));
    const request = tx.objectStore(name).getAll();
    request.onsuccess = () => done(request.result);
    tx.onerror = () => fail(tx.error);
  });
  db.close();
  return all;
}
export const noRoom = (): never => {
  throw new DOMException('no room', 'QuotaExceededError');
};
