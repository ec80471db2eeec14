import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it, vi } from 'vitest';
import { readPlaces, readRows } from '../../src/place/form/readPlaces.ts';
import { placeVersion } from '../../src/place/model/migrations/place.ts';
import { storeNames } from '../../src/place/store/backend.ts';
import { databaseVersion } from '../../src/place/store/idbBackend.ts';
import { memoryStore, openStore, startAnew } from '../../src/place/store/openStore.ts';
import { stateWords } from '../../src/place/store/storageState.ts';
import { filesBelow } from '../support/files.ts';
import { makeDatabase } from './aDatabase.ts';
import { aPlace } from './aPlace.ts';
import { anewForEach, closeAll, here, one, open, places, raw, save } from './aStore.ts';
import firstDatabase from './fixtures/database-1.json' with { type: 'json' };

anewForEach();

/** Its places as they are read today: the first version had room for units and a kind of country. */
const placesOfToday = firstDatabase.stores.places.map(({ units, country, ...rest }: Readonly<Record<string, unknown>>) => ({
  ...rest,
  v: placeVersion,
}));

describe('a database of an older copy', () => {
  it('gets the stores that it lacks, and keeps what it holds', async () => {
    await makeDatabase(firstDatabase);
    const store = await open();
    expect(store.state()).toEqual({ is: 'kept' });
    expect(await places(store)).toEqual(placesOfToday);
    expect(await store.aside()).toEqual(firstDatabase.stores.aside);
    const db: IDBDatabase = await new Promise((done) => {
      const request = indexedDB.open('holdwater');
      request.onsuccess = () => done(request.result);
    });
    expect([db.version, [...db.objectStoreNames]]).toEqual([databaseVersion, storeNames.toSorted()]);
    db.close();
  });
  it('keeps each place as it was written until somebody changes it', async () => {
    await makeDatabase(firstDatabase);
    const store = await open();
    const [first] = await places(store);
    if (first === undefined) throw new RangeError('no place was there');
    expect(await raw()).toEqual(firstDatabase.stores.places);
    await save(store, first, { ...first, name: 'Renamed' });
    const written = (await raw()).filter((each) => JSON.stringify(each).includes('Renamed'));
    expect(written).toMatchObject([{ v: placeVersion, rev: first.rev + 1 }]);
    expect(Object.keys(written[0] ?? {})).not.toContain('country');
    expect((await places(store)).length).toBe(firstDatabase.stores.places.length);
  });
  it('is one of each version that ever was', () => {
    expect(filesBelow('tests/place/fixtures', /database-\d+\.json$/)).toHaveLength(databaseVersion - 1);
  });
  it('opens for a form before the page of the place has brought it up, and is left as it was', async () => {
    await makeDatabase(firstDatabase);
    expect(await readPlaces()).toEqual(firstDatabase.stores.places);
    expect(await readRows('p1')).toEqual([]);
    expect((await indexedDB.databases()).map(({ version }) => version)).toEqual([1]);
  });
  it('lets a copy that is open in another window go on being told of it', async () => {
    const first = await open();
    await save(first, null, aPlace());
    // A newer copy comes and wants more stores.
    await new Promise<void>((done, fail) => {
      const request = indexedDB.open('holdwater', databaseVersion + 1);
      request.onerror = () => fail(request.error);
      request.onsuccess = () => {
        request.result.close();
        done();
      };
    });
    expect(first.state()).toEqual({ is: 'memory', why: 'lost' });
  });
  it('of this version that lacks a store is damaged, and nobody makes it anew unasked', async () => {
    await makeDatabase({ version: databaseVersion, stores: { places: [aPlace()] } });
    expect((await open()).state()).toEqual({ is: 'memory', why: 'damaged' });
    expect(await raw()).toEqual([aPlace()]);
  });
});

describe('storage that is not there', () => {
  it.each([
    ['refused', () => Reflect.deleteProperty(globalThis, 'indexedDB')],
    [
      'refused',
      () =>
        vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
          throw new DOMException('no', 'SecurityError');
        }),
    ],
    [
      'damaged',
      () =>
        vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
          throw new DOMException('broken', 'UnknownError');
        }),
    ],
  ] as const)('%s: the same store keeps nothing, and says so from the start', async (why, cause) => {
    cause();
    const store = await open();
    expect(store.state()).toEqual({ is: 'memory', why });
    expect(stateWords(store.state())).toMatch(/^This window keeps nothing\. Save the file/);
    await save(store, null, aPlace());
    await save(store, aPlace(), aPlace({ name: 'Here for now' }));
    expect((await one(store)).name).toBe('Here for now');
  });
  it('that gives no answer is not waited for', async () => {
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() =>
      Object.assign(Object.create(IDBOpenDBRequest.prototype), { addEventListener: () => {}, removeEventListener: () => {} }),
    );
    const begin = performance.now();
    const store = await open('first window', { patienceMs: 50 });
    expect(store.state()).toEqual({ is: 'memory', why: 'silent' });
    expect(performance.now() - begin).toBeLessThan(1000);
  });
  it('because a newer copy has changed it is said, and not touched', async () => {
    const db: IDBDatabase = await new Promise((done) => {
      const request = indexedDB.open('holdwater', 99);
      request.onsuccess = () => done(request.result);
    });
    db.close();
    expect((await open()).state()).toEqual({ is: 'memory', why: 'newer' });
  });
  it('because the browser cannot read it is started anew only at a word', async () => {
    await save(await open(), null, aPlace());
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
      throw new DOMException('broken', 'UnknownError');
    });
    expect((await open()).state()).toEqual({ is: 'memory', why: 'damaged' });
    vi.restoreAllMocks();
    expect(await places(await open())).toHaveLength(1);
    closeAll();
    await startAnew();
    const anew = await open();
    expect([anew.state(), await places(anew)]).toEqual([{ is: 'kept' }, []]);
  });
  it('by choice keeps nothing', async () => {
    const store = await openStore({ by: 'x', texts: here.local, isMemoryChosen: true });
    await save(store, null, aPlace());
    expect(store.state()).toEqual({ is: 'memory', why: 'chosen' });
    expect(await places(memoryStore('chosen', { by: 'x' }))).toEqual([]);
  });
  it('any more, while the page is open, holds what is typed', async () => {
    const store = await open();
    await save(store, null, aPlace());
    await startAnewBeside();
    expect(await save(store, aPlace(), aPlace({ name: 'After' }))).toMatchObject({ is: 'held' });
    expect(store.state()).toEqual({ is: 'memory', why: 'lost' });
  });
});
/** Another window takes the database away, which makes this one let go of it. */
const startAnewBeside = (): Promise<void> => startAnew();
