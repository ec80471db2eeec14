import { openDB } from 'idb';
import { type Backend, storeNames } from './backend.ts';

export const databaseName = 'holdwater';
/** Version 1 was made with as few as the store of places. Opened as 2 it gets those that came since, and what it holds stays. */
export const databaseVersion = 2;

/**
 * The browser's own database, named the same wherever a copy of these pages lies on its origin.
 * @throws DOMException as the browser gives it, where it does not let us
 */
export async function idbBackend(onLost: () => void): Promise<Backend> {
  const db = await openDB(databaseName, databaseVersion, {
    upgrade: (made) => {
      for (const name of storeNames) if (!made.objectStoreNames.contains(name)) made.createObjectStore(name, { keyPath: 'id' });
    },
    // A newer copy wants to change it: this one lets go, rather than stop that one.
    blocking: (_, __, event) => {
      if (event.target instanceof IDBDatabase) event.target.close();
      onLost();
    },
    terminated: onLost,
  });
  // A database of this version has all of them: where one is missing the device has lost it, and nobody knows what else. That is for a person to decide.
  if (!storeNames.every((name) => db.objectStoreNames.contains(name))) {
    db.close();
    throw new DOMException('a store is missing', 'UnknownError');
  }
  return {
    all: (store) => db.getAll(store),
    some: async (store, ids) => {
      const tx = db.transaction(store);
      const found: readonly unknown[] = await Promise.all(ids.map((id) => tx.store.get(id)));
      return found.filter((each) => each !== undefined);
    },
    change: async (reads, decide) => {
      const tx = db.transaction(storeNames, 'readwrite', { durability: 'strict' });
      // Heard at once, so that a failed write is never an error that nobody caught.
      const done = tx.done.then(
        () => undefined,
        (error: unknown) => ({ error }),
      );
      try {
        const stored: readonly unknown[] = await Promise.all(reads.map(({ store, id }) => tx.objectStore(store).get(id)));
        const requests: Promise<unknown>[] = [];
        for (const write of decide(stored)) {
          const into = tx.objectStore(write.store);
          const request: Promise<unknown> = 'put' in write ? into.put(write.put) : into.delete(write.remove);
          // Should the next one throw, this one fails with it, and is heard.
          request.catch(() => undefined);
          requests.push(request);
        }
        await Promise.all(requests);
      } catch (error) {
        try {
          tx.abort();
        } catch {
          // It has ended itself already.
        }
        await done;
        throw error;
      }
      const failed = await done;
      if (failed) throw failed.error;
    },
    close: () => db.close(),
  };
}
