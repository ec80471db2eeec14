/** A database as an edition of these pages left it: its version, and what lay in each store that it had. */
export interface OldDatabase {
  readonly version: number;
  readonly stores: Readonly<Record<string, readonly unknown[]>>;
}
/** Made past all of our own code, in a test as in a browser. */
export const makeDatabase = ({ version, stores }: OldDatabase): Promise<void> =>
  new Promise((done, fail) => {
    const asked = indexedDB.open('holdwater', version);
    asked.onupgradeneeded = () => {
      for (const [name, records] of Object.entries(stores)) {
        const store = asked.result.createObjectStore(name, { keyPath: 'id' });
        for (const record of records) store.put(record);
      }
    };
    asked.onerror = () => fail(asked.error);
    asked.onsuccess = () => {
      asked.result.close();
      done();
    };
  });
