import { IDBObjectStore } from 'fake-indexeddb';
import { describe, expect, it, vi } from 'vitest';
import { mostBytes, openJournal } from '../../src/place/store/journal.ts';
import { placeKind } from '../../src/place/store/kinds.ts';
import { stateWords } from '../../src/place/store/storageState.ts';
import { aPlace } from './aPlace.ts';
import { anewForEach, here, noRoom, one, open, raw, save } from './aStore.ts';
import { texts } from './texts.ts';

anewForEach();

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
    expect([...here.local.map.keys()].some((key) => key.startsWith('holdwater-journal:'))).toBe(true);
    const next = await open('second window');
    expect(await one(next)).toMatchObject({ name: 'Typed last', rev: 2 });
    expect(here.local.map.size).toBe(0);
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
    here.local.removeItem = () => {};
    await save(store, aPlace(), aPlace({ name: 'Typed last' }));
    const left = [...here.local.map];
    here.local = texts();
    for (const [key, text] of left) here.local.setItem(key, text);
    const next = await open();
    expect(await one(next)).toMatchObject({ name: 'Typed last', rev: 2 });
    expect((await one(next)).clash).toBeUndefined();
    expect(here.local.map.size).toBe(0);
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
    here.local.setItem('holdwater-journal:dead', JSON.stringify([entry]));
    expect(await one(await open())).toMatchObject({ name: 'Theirs', clash: [{ path: 'name', other: '"Mine"', otherBy: 'first window' }] });
  });
  it('reads past a journal that somebody else wrote into', async () => {
    await save(await open(), null, aPlace());
    here.local.setItem('holdwater-journal:x', '{"not": "a journal"');
    here.local.setItem('holdwater-journal:y', '[{"store":"elsewhere","id":"p1","rev":1,"changes":[],"by":"x","at":"y"}]');
    here.local.setItem('holdwater-journal:z', '[7]');
    expect(await one(await open())).toEqual(aPlace());
  });
});

describe('the journal', () => {
  it('holds at most 64 kB and says so', () => {
    const journal = openJournal(here.local, 'w');
    const entry = (text: string) => [{ store: 'places', id: 'p1', rev: 1, changes: [{ path: ['name'], to: text }], by: 'x', at: 'y' }] as const;
    expect(journal.write(entry('short'))).toBe(true);
    expect(journal.write(entry('x'.repeat(mostBytes)))).toBe(false);
  });
  it('does without storage, and with one that refuses', () => {
    expect(openJournal(undefined, 'w').write([])).toBe(false);
    expect(openJournal({ ...here.local, setItem: noRoom }, 'w').write([])).toBe(false);
    expect(openJournal({ ...here.local, length: 1, key: noRoom }, 'w').left()).toEqual([]);
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
    expect(here.local.map.size).toBe(0);
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
