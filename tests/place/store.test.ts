import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { describe, expect, it, vi } from 'vitest';
import { editing } from '../../src/place/store/editing.ts';
import { placeKind } from '../../src/place/store/kinds.ts';
import { roomOf } from '../../src/place/store/storageState.ts';
import { aPlace } from './aPlace.ts';
import { anewForEach, noRoom, one, open, places, raw, save } from './aStore.ts';

anewForEach();

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
