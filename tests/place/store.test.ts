import 'fake-indexeddb/auto';
import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readPlaces, readRows } from '../../src/place/form/readPlaces.ts';
import type { Place } from '../../src/place/model/place.ts';
import { storeNames } from '../../src/place/store/backend.ts';
import { editing } from '../../src/place/store/editing.ts';
import { databaseVersion } from '../../src/place/store/idbBackend.ts';
import { mostBytes, openJournal } from '../../src/place/store/journal.ts';
import { placeKind } from '../../src/place/store/kinds.ts';
import { memoryStore, openStore, startAnew } from '../../src/place/store/openStore.ts';
import { roomOf, stateWords } from '../../src/place/store/storageState.ts';
import type { Store } from '../../src/place/store/store.ts';
import { filesBelow } from '../support/files.ts';
import { makeDatabase } from './aDatabase.ts';
import { aPlace, withPasture } from './aPlace.ts';
import firstDatabase from './fixtures/database-1.json' with { type: 'json' };
import { texts } from './texts.ts';

const opened: Store[] = [];
let local = texts();
const open = async (by = 'first window', more: { readonly now?: () => Date; readonly patienceMs?: number } = {}): Promise<Store> => {
  const store = await openStore({ by, texts: local, ...more });
  opened.push(store);
  return store;
};
const places = async (store: Store): Promise<readonly Place[]> => (await store.read(placeKind)).records;
const one = async (store: Store): Promise<Place> => {
  const [place] = await places(store);
  if (place === undefined) throw new RangeError('no place is kept');
  return place;
};
const save = async (store: Store, before: Place | null, after: Place) => {
  const [saved] = await store.save(placeKind, [{ before, after }]);
  if (saved === undefined) throw new RangeError('nothing was saved');
  return saved;
};
/** What lies in the database, past all of our own reading. */
async function raw(write?: (store: IDBObjectStore) => void, name: 'places' | 'aside' = 'places'): Promise<readonly unknown[]> {
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
const noRoom = (): never => {
  throw new DOMException('no room', 'QuotaExceededError');
};

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  local = texts();
});
afterEach(() => {
  for (const store of opened.splice(0)) store.close();
  vi.restoreAllMocks();
  vi.useRealTimers();
});

describe('what is kept', () => {
  it('is there at the next opening, with its revision', async () => {
    const store = await open();
    expect(store.state()).toEqual({ is: 'kept' });
    await save(store, null, aPlace());
    const saved = await save(store, aPlace(), aPlace({ name: 'Bench place' }));
    expect(saved).toMatchObject({ is: 'saved', value: { name: 'Bench place', rev: 2, changedBy: 'first window' } });
    store.close();
    expect((await one(await open())).name).toBe('Bench place');
  });
  it('is written strictly, in one transaction', async () => {
    const asked = vi.spyOn(IDBDatabase.prototype, 'transaction');
    const store = await open();
    await save(store, null, aPlace());
    expect(asked.mock.calls.filter(([, mode]) => mode === 'readwrite').at(-1)?.[2]).toEqual({ durability: 'strict' });
  });
  it('is thrown away with one word, and does not come back by a change that was under way', async () => {
    const store = await open();
    await save(store, null, aPlace());
    await store.remove(placeKind, 'p1');
    expect(await places(store)).toEqual([]);
    expect(await save(store, aPlace(), aPlace({ name: 'Late' }))).toEqual({ is: 'gone' });
    expect(await places(store)).toEqual([]);
  });
  it('that the browser has wiped is empty, and nothing fails', async () => {
    await save(await open(), null, aPlace());
    globalThis.indexedDB = new IDBFactory();
    expect(await places(await open())).toEqual([]);
  });
});

describe('a browser that ends in mid-write', () => {
  it('leaves the store whole, and the journal brings the last change back', async () => {
    const store = await open();
    await save(store, null, aPlace());
    // The transaction never ends: the process is gone.
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('gone', 'AbortError');
    });
    await store.save(placeKind, [{ before: aPlace(), after: aPlace({ name: 'Typed last' }) }]);
    vi.restoreAllMocks();
    expect(await raw()).toEqual([aPlace()]);
    expect([...local.map.keys()].some((key) => key.startsWith('holdwater-journal:'))).toBe(true);
    const next = await open('second window');
    expect(await one(next)).toMatchObject({ name: 'Typed last', rev: 2 });
    expect(local.map.size).toBe(0);
  });
  it('writes all of a change or nothing of it', async () => {
    const store = await open();
    await save(store, null, aPlace());
    const put = IDBObjectStore.prototype.put;
    let count = 0;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value: unknown) {
      count += 1;
      if (count > 1) throw new DOMException('gone', 'AbortError');
      return put.call(this, value);
    });
    await store.save(placeKind, [
      { before: aPlace(), after: aPlace({ name: 'First of two' }) },
      { before: null, after: aPlace({ id: 'p2' }) },
    ]);
    vi.restoreAllMocks();
    expect(count).toBe(2);
    expect(await raw()).toEqual([aPlace()]);
  });
  it('brings back a new place too', async () => {
    const store = await open();
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('gone', 'AbortError');
    });
    await store.save(placeKind, [{ before: null, after: aPlace() }]);
    vi.restoreAllMocks();
    expect(await one(await open())).toEqual(aPlace());
  });
  it('changes nothing twice where the write had come through', async () => {
    const store = await open();
    await save(store, null, aPlace());
    // The journal stays behind although the write was done.
    local.removeItem = () => {};
    await save(store, aPlace(), aPlace({ name: 'Typed last' }));
    const left = [...local.map];
    local = texts();
    for (const [key, text] of left) local.setItem(key, text);
    const next = await open();
    expect(await one(next)).toMatchObject({ name: 'Typed last', rev: 2 });
    expect((await one(next)).clash).toBeUndefined();
    expect(local.map.size).toBe(0);
  });
  it('shows both where somebody else changed the same field meanwhile', async () => {
    await save(await open(), null, aPlace());
    const entry = {
      store: 'places',
      id: 'p1',
      rev: 1,
      changes: [{ path: ['name'], from: 'Home place', to: 'Mine' }],
      by: 'first window',
      at: '2026-06-02T08:00:00.000Z',
    };
    await save(await open('second window'), aPlace(), aPlace({ name: 'Theirs' }));
    local.setItem('holdwater-journal:dead', JSON.stringify([entry]));
    expect(await one(await open())).toMatchObject({ name: 'Theirs', clash: [{ path: 'name', other: '"Mine"', otherBy: 'first window' }] });
  });
  it('reads past a journal that somebody else wrote into', async () => {
    await save(await open(), null, aPlace());
    local.setItem('holdwater-journal:x', '{"not": "a journal"');
    local.setItem('holdwater-journal:y', '[{"store":"elsewhere","id":"p1","rev":1,"changes":[],"by":"x","at":"y"}]');
    local.setItem('holdwater-journal:z', '[7]');
    expect(await one(await open())).toEqual(aPlace());
  });
});

describe('the journal', () => {
  it('holds at most 64 kB and says so', () => {
    const journal = openJournal(local, 'w');
    const entry = (text: string) => [{ store: 'places', id: 'p1', rev: 1, changes: [{ path: ['name'], to: text }], by: 'x', at: 'y' }] as const;
    expect(journal.write(entry('short'))).toBe(true);
    expect(journal.write(entry('x'.repeat(mostBytes)))).toBe(false);
  });
  it('does without storage, and with one that refuses', () => {
    expect(openJournal(undefined, 'w').write([])).toBe(false);
    expect(openJournal({ ...local, setItem: noRoom }, 'w').write([])).toBe(false);
    expect(openJournal({ ...local, length: 1, key: noRoom }, 'w').left()).toEqual([]);
  });
});

describe('two windows', () => {
  const both = async (): Promise<readonly [Store, Store]> => {
    const [first, second] = [await open('first window'), await open('second window')];
    await save(first, null, aPlace());
    return [first, second];
  };
  it('that change different fields have both', async () => {
    const [first, second] = await both();
    await save(first, aPlace(), withPasture(aPlace(), 'low', { areaAc: 80 }));
    const saved = await save(second, aPlace(), { ...withPasture(aPlace(), 'high', { areaAc: 110 }), name: 'Bench place' });
    expect(saved).toMatchObject({ is: 'saved', clashes: 0, value: { rev: 3, name: 'Bench place' } });
    expect((await one(first)).pastures.map(({ areaAc }) => areaAc)).toEqual([80, 110]);
    expect((await one(first)).clash).toBeUndefined();
  });
  it('that change the same field show both, and overwrite nothing unseen', async () => {
    const [first, second] = await both();
    await save(first, aPlace(), withPasture(aPlace(), 'low', { areaAc: 80 }));
    await save(second, aPlace(), withPasture(aPlace(), 'low', { areaAc: 82 }));
    const now = await one(first);
    expect(now.pastures[0]?.areaAc).toBe(80);
    expect(now.clash).toMatchObject([{ path: 'pastures/low/areaAc', other: '82', otherBy: 'second window' }]);
    // Somebody picks; a clash that came meanwhile stays.
    const { clash, ...rest } = withPasture(now, 'low', { areaAc: 82 });
    expect(clash).toHaveLength(1);
    expect((await save(second, now, rest)).is).toBe('saved');
    expect(await one(first)).not.toHaveProperty('clash');
  });
  it('that both add things have all of them', async () => {
    const [first, second] = await both();
    const cow = { kind: 'cow', countHead: 1 } as const;
    await save(first, aPlace(), aPlace({ herd: [...aPlace().herd, { id: 'a', ...cow }] }));
    await save(second, aPlace(), aPlace({ herd: [...aPlace().herd, { id: 'b', ...cow }] }));
    expect((await one(first)).herd.map(({ id }) => id)).toEqual(['cows', 'a', 'b']);
  });
  it('hear of each other', async () => {
    const [first, second] = await both();
    const heard = new Promise((done) => second.listen(done));
    await save(first, aPlace(), aPlace({ name: 'Bench place' }));
    expect(await heard).toEqual({ store: 'places', ids: ['p1'] });
  });
  it('with clocks that are years apart are told by revisions', async () => {
    const late = await open('late', { now: () => new Date('2031-01-01T00:00:00Z') });
    const early = await open('early', { now: () => new Date('1999-01-01T00:00:00Z') });
    await save(late, null, aPlace());
    const saved = await save(late, aPlace(), aPlace({ name: 'First' }));
    if (saved.is !== 'saved') throw new RangeError(saved.is);
    await save(early, saved.value, { ...saved.value, name: 'Second' });
    expect(await one(late)).toMatchObject({ name: 'Second', rev: 3, changedAt: '1999-01-01T00:00:00.000Z' });
    expect(await one(late)).not.toHaveProperty('clash');
  });
});

describe('a device that is full', () => {
  it('holds what is typed, loses nothing older, and writes all once there is room', async () => {
    const store = await open();
    await save(store, null, aPlace());
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(noRoom);
    expect(await save(store, aPlace(), aPlace({ name: 'Held' }))).toMatchObject({ is: 'held', value: { name: 'Held' } });
    expect(store.state()).toEqual({ is: 'full' });
    expect(stateWords(store.state())).toBe('This device is full. Save the file now.');
    expect((await one(store)).name).toBe('Held');
    expect(await save(store, null, aPlace({ id: 'p2', name: 'Second' }))).toMatchObject({ is: 'held' });
    expect(await raw()).toEqual([aPlace()]);
    put.mockRestore();
    await save(store, aPlace({ name: 'Held' }), aPlace({ name: 'Held and more' }));
    expect(store.state()).toEqual({ is: 'kept' });
    expect((await raw()).map((each) => placeKind.read(each))).toMatchObject([
      { value: { id: 'p1', name: 'Held and more', rev: 2 } },
      { value: { id: 'p2', name: 'Second' } },
    ]);
    expect(local.map.size).toBe(0);
  });
  it('keeps what was held in the journal, should the window close', async () => {
    const store = await open();
    await save(store, null, aPlace());
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(noRoom);
    await save(store, aPlace(), aPlace({ name: 'Held' }));
    vi.restoreAllMocks();
    expect((await one(await open())).name).toBe('Held');
  });
});

describe('a database of an older copy', () => {
  it('gets the stores that it lacks, and keeps what it holds', async () => {
    await makeDatabase(firstDatabase);
    const store = await open();
    expect(store.state()).toEqual({ is: 'kept' });
    expect(await places(store)).toEqual(firstDatabase.stores.places);
    expect(await store.aside()).toEqual(firstDatabase.stores.aside);
    const db: IDBDatabase = await new Promise((done) => {
      const request = indexedDB.open('holdwater');
      request.onsuccess = () => done(request.result);
    });
    expect([db.version, [...db.objectStoreNames]]).toEqual([databaseVersion, storeNames.toSorted()]);
    db.close();
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
    for (const store of opened.splice(0)) store.close();
    await startAnew();
    const anew = await open();
    expect([anew.state(), await places(anew)]).toEqual([{ is: 'kept' }, []]);
  });
  it('by choice keeps nothing', async () => {
    const store = await openStore({ by: 'x', texts: local, isMemoryChosen: true });
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

describe('records', () => {
  it('of a newer copy are neither opened nor written, and come out as they are', async () => {
    const store = await open();
    const newer = { ...aPlace(), v: 99, moon: 'full' };
    await raw((into) => void into.put(newer));
    await save(store, null, aPlace({ id: 'p2' }));
    const { records, newer: found } = await store.read(placeKind);
    expect(records.map(({ id }) => id)).toEqual(['p2']);
    expect(found).toEqual([newer]);
    expect(await save(store, aPlace(), aPlace({ name: 'Over it' }))).toEqual({ is: 'newer' });
    expect(await raw()).toContainEqual(newer);
  });
  it('that are damaged are set aside with the reason, and all else opens', async () => {
    const store = await open();
    const damaged = { ...aPlace({ id: 'bad' }), pastures: [{ id: 'x', name: 7 }] };
    await raw((into) => void into.put(damaged));
    await save(store, null, aPlace());
    expect((await places(store)).map(({ id }) => id)).toEqual(['p1']);
    expect(await store.aside()).toEqual([
      { id: 'places-bad', store: 'places', why: 'What stands at “pastures 1, name” cannot be used.', raw: damaged },
    ]);
    expect(await raw()).toEqual([aPlace()]);
    await store.dropAside('places-bad');
    expect(await store.aside()).toEqual([]);
  });
  it('that are damaged stay where they are while there is no room, and all else opens', async () => {
    const store = await open();
    await save(store, null, aPlace());
    await raw((into) => void into.put({ id: 'bad', v: 'one' }));
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(noRoom);
    expect((await places(store)).map(({ id }) => id)).toEqual(['p1']);
    vi.restoreAllMocks();
    expect(await raw()).toContainEqual({ id: 'bad', v: 'one' });
  });
});

describe('working on a place', () => {
  it('writes 300 ms after the last key, once', async () => {
    const store = await open();
    await save(store, null, aPlace());
    const saved: unknown[] = [];
    const work = editing(store, placeKind, aPlace(), false, (each) => saved.push(each));
    for (const name of ['B', 'Be', 'Ben', 'Bench']) work.set(aPlace({ name }));
    expect(work.value().name).toBe('Bench');
    expect((await one(store)).name).toBe('Home place');
    await vi.waitFor(() => expect(saved).toHaveLength(1), { timeout: 2000 });
    expect(await one(store)).toMatchObject({ name: 'Bench', rev: 2 });
    expect(await work.flush()).toBeUndefined();
  });
  it('takes in what another window changed, and never puts an old value back over it', async () => {
    const [store, other] = [await open('first window'), await open('second window')];
    await save(store, null, aPlace());
    const work = editing(store, placeKind, aPlace(), false, () => {});
    await save(other, aPlace(), aPlace({ hotF: 99 }));
    work.set({ ...work.value(), name: 'Bench' });
    const writing = work.flush();
    // Typed while the first write is on its way.
    work.set({ ...work.value(), name: 'Bench place' });
    await writing;
    await work.flush();
    expect(await one(other)).toMatchObject({ name: 'Bench place', hotF: 99 });
    expect(work.value()).toMatchObject({ name: 'Bench place', hotF: 99 });
    expect(await one(other)).not.toHaveProperty('clash');
  });
});

describe('room', () => {
  it('is asked for once told to, and told as the browser tells it', async () => {
    const persist = vi.fn(async () => true);
    const manager = { persisted: async () => false, persist, estimate: async () => ({ usage: 10, quota: 100 }) };
    expect(await roomOf(manager, false)).toEqual({ isPersisted: false, usedBytes: 10, roomBytes: 100 });
    expect(persist).not.toHaveBeenCalled();
    expect(await roomOf(manager, true)).toEqual({ isPersisted: true, usedBytes: 10, roomBytes: 100 });
    expect(await roomOf(undefined, true)).toEqual({ isPersisted: false });
    expect(await roomOf({ persisted: () => Promise.reject(new Error('no')) }, true)).toEqual({ isPersisted: false });
  });
});
