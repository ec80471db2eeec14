import { databaseName } from './idbBackend.ts';
import type { TextStore } from './journal.ts';

const ask = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((done, fail) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => fail(request.error ?? new Error('no answer'));
  });

/** All that can still be read of a damaged database, as it lies there, with what the journals hold. A store that cannot be read is named with its fault. */
export async function rawOfAll(texts: TextStore | undefined): Promise<unknown> {
  const stores: Record<string, unknown> = {};
  try {
    const asked = indexedDB.open(databaseName);
    // There is none: leave none behind.
    asked.onupgradeneeded = () => asked.transaction?.abort();
    const db = await ask(asked);
    for (const name of db.objectStoreNames) {
      try {
        stores[name] = await ask(db.transaction(name).objectStore(name).getAll());
      } catch (error) {
        stores[name] = `could not be read: ${String(error)}`;
      }
    }
    db.close();
  } catch (error) {
    stores['all'] = `could not be read: ${String(error)}`;
  }
  const kept: Record<string, string | null> = {};
  try {
    for (let index = 0; texts !== undefined && index < texts.length; index += 1) {
      const key = texts.key(index);
      if (key?.startsWith('holdwater-') === true) kept[key] = texts.getItem(key);
    }
  } catch {
    // Switched off meanwhile.
  }
  return { file: 'holdwater-raw', stores, kept };
}
