import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, expect, it } from 'vitest';
import { readPlaces } from '../../src/place/form/readPlaces.ts';
import { placeKind } from '../../src/place/store/kinds.ts';
import { openStore } from '../../src/place/store/openStore.ts';
import { aPlace } from './aPlace.ts';

// A form reads places without the store and its schemas. The name and the versions written out there must stay those of the store.
beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

it('finds for a form what the store has kept', async () => {
  const store = await openStore({ by: 'this window', texts: undefined });
  await store.save(placeKind, [{ before: null, after: aPlace({ name: 'Two Bench' }) }]);
  const { records } = await store.read(placeKind);
  store.close();
  expect(records).toHaveLength(1);
  expect(await readPlaces()).toEqual(records);
});

it('finds nothing, and leaves nothing behind, where nothing was ever kept', async () => {
  expect(await readPlaces()).toEqual([]);
  expect(await indexedDB.databases()).toEqual([]);
});
