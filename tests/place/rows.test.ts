import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { bringIn } from '../../src/place/files/merge.ts';
import { previewOf } from '../../src/place/files/preview.ts';
import { readFile } from '../../src/place/files/read.ts';
import { textOfPlaces } from '../../src/place/files/save.ts';
import { placeVersion } from '../../src/place/model/migrations/place.ts';
import { readRow } from '../../src/place/model/readRow.ts';
import { type Row, rowSchema } from '../../src/place/model/row.ts';
import { placeKind } from '../../src/place/store/kinds.ts';
import { memoryStore, openStore } from '../../src/place/store/openStore.ts';
import { rowKind } from '../../src/place/store/rowKind.ts';
import type { Store } from '../../src/place/store/store.ts';
import { root } from '../support/files.ts';
import { aPlace } from './aPlace.ts';
import { aHay, aHeight, aMove, aPlan, aRain } from './aRow.ts';
import { texts } from './texts.ts';

let local = texts();
const opened: Store[] = [];
const open = async (by = 'first window'): Promise<Store> => {
  const store = await openStore({ by, texts: local });
  opened.push(store);
  return store;
};
const rowsIn = async (store: Store): Promise<readonly Row[]> => (await store.read(rowKind)).records;
const add = (store: Store, ...rows: readonly Row[]) =>
  store.save(
    rowKind,
    rows.map((after) => ({ before: null, after })),
  );
const fails = (name: string) => () => {
  throw new DOMException('no', name);
};

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  local = texts();
});
afterEach(() => {
  for (const store of opened.splice(0)) store.close();
  vi.restoreAllMocks();
});

describe('a line of the record', () => {
  it('of each kind is what its schema says, and nothing else is', () => {
    for (const row of [aMove(), aHeight(), aHay(), aRain(), aPlan()]) expect(readRow(row)).toEqual({ is: 'read', value: row });
    expect(readRow({ ...aMove(), moon: 'full' }).is).toBe('damaged');
    expect(readRow({ ...aMove(), inDay: '2026-02-30' }).is).toBe('damaged');
    expect(readRow({ ...aMove(), is: 'milking' }).is).toBe('damaged');
    expect(readRow({ ...aRain(), days: 0 })).toEqual({ is: 'damaged', why: 'What stands at “days” cannot be used.' });
    expect(readRow(7)).toEqual({ is: 'damaged', why: 'It does not have the shape of a line of the record.' });
    expect(readRow({ ...aRain(), v: 2 })).toEqual({ is: 'newer', v: 2 });
  });
  it('with every field of every kind is among the fixtures', () => {
    const found = readFile(readFileSync(join(root, `tests/place/fixtures/v${placeVersion}/record.json`), 'utf8'));
    if (found.is !== 'read') throw new RangeError(found.say);
    for (const { entries } of rowSchema.options) {
      const row = found.rows.find((each) => each.is === entries.is.literal);
      expect(Object.keys(entries).filter((key) => !Object.hasOwn(row ?? {}, key))).toEqual([]);
    }
  });
});

describe('two windows', () => {
  it('that add lines lose none, and clash over none', async () => {
    const [one, other] = [await open(), await open('second window')];
    await Promise.all([add(one, aRain()), add(other, aRain({ id: 'r2', day: '2026-05-05' })), add(one, aMove()), add(other, aHeight())]);
    const rows = await rowsIn(await open('third'));
    expect(rows.map(({ id }) => id)).toEqual(['h1', 'm1', 'r1', 'r2']);
    expect(rows.filter(({ clash }) => clash !== undefined)).toEqual([]);
  });
  it('that change one line in different fields are joined; in the same field both are kept', async () => {
    const [one, other] = [await open(), await open('second window')];
    await add(one, aMove());
    await one.save(rowKind, [{ before: aMove(), after: aMove({ outDay: '2026-05-08' }) }]);
    await other.save(rowKind, [{ before: aMove(), after: aMove({ word: 'left the fescue', outDay: '2026-05-09' }) }]);
    const [row] = await rowsIn(one);
    expect(row).toMatchObject({ outDay: '2026-05-08', word: 'left the fescue', clash: [{ path: 'outDay', other: '"2026-05-09"' }] });
  });
});

describe('a browser that ends in mid-write', () => {
  it('leaves a move whole or not at all, and the journal brings both halves of it back', async () => {
    const store = await open();
    await add(store, aMove());
    const put = IDBObjectStore.prototype.put;
    let count = 0;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value: unknown) {
      count += 1;
      if (count > 1) throw new DOMException('gone', 'AbortError');
      return put.call(this, value);
    });
    const next = aMove({ id: 'm2', paddockId: 'high', inDay: '2026-05-08' });
    await store.save(rowKind, [
      { before: aMove(), after: aMove({ outDay: '2026-05-08' }) },
      { before: null, after: next },
    ]);
    vi.restoreAllMocks();
    expect(count).toBe(2);
    store.close();
    const again = await open('second window');
    expect(await rowsIn(again)).toMatchObject([
      { id: 'm1', outDay: '2026-05-08', rev: 2 },
      { id: 'm2', inDay: '2026-05-08', rev: 1 },
    ]);
    expect(local.map.size).toBe(0);
  });
});

describe('a full device', () => {
  it('holds places and lines in the window and in the journal together, and writes all once there is room', async () => {
    const store = await open();
    await add(store, aRain());
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(fails('QuotaExceededError'));
    await store.save(placeKind, [{ before: null, after: aPlace() }]);
    expect(await add(store, aMove())).toEqual([{ is: 'held', value: aMove() }]);
    expect(store.state()).toEqual({ is: 'full' });
    const [journal = ''] = [...local.map.values()];
    expect(JSON.parse(journal)).toMatchObject([
      { store: 'rows', id: 'm1' },
      { store: 'places', id: 'p1' },
    ]);
    // What is read is what is kept and what is held.
    expect((await rowsIn(store)).map(({ id }) => id)).toEqual(['r1', 'm1']);
    vi.restoreAllMocks();
    await add(store, aHeight());
    expect(store.state()).toEqual({ is: 'kept' });
    const later = await open('later');
    expect((await rowsIn(later)).map(({ id }) => id)).toEqual(['h1', 'm1', 'r1']);
    expect((await later.read(placeKind)).records).toEqual([aPlace()]);
    expect(local.map.size).toBe(0);
  });
  it('that is left like that has all of it again at the next opening', async () => {
    const store = await open();
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(fails('QuotaExceededError'));
    await store.save(placeKind, [{ before: null, after: aPlace() }]);
    await add(store, aMove());
    vi.restoreAllMocks();
    store.close();
    const next = await open('next');
    expect(await rowsIn(next)).toEqual([aMove()]);
    expect((await next.read(placeKind)).records).toEqual([aPlace()]);
  });
});

it('a damaged line is set aside with its reason, and the rest opens', async () => {
  const store = await open();
  await add(store, aRain(), aMove());
  store.close();
  const db: IDBDatabase = await new Promise((done) => {
    const asked = indexedDB.open('holdwater');
    asked.onsuccess = () => done(asked.result);
  });
  await new Promise<void>((done) => {
    const tx = db.transaction('rows', 'readwrite');
    tx.objectStore('rows').put({ ...aMove(), inDay: 'in May' });
    tx.oncomplete = () => done();
  });
  db.close();
  const next = await open('next');
  expect(await rowsIn(next)).toEqual([aRain()]);
  expect(await next.aside()).toMatchObject([{ store: 'rows', why: 'What stands at “in day” cannot be used.', raw: { id: 'm1' } }]);
});

it('a place that is thrown away takes its record with it, in one step', async () => {
  const store = await open();
  await store.saveAll([
    { kind: placeKind, edits: [{ before: null, after: aPlace() }] },
    { kind: rowKind, edits: [aMove(), aRain()].map((after) => ({ before: null, after })) },
  ]);
  await store.remove(placeKind, 'p1', [
    { store: 'rows', id: 'm1' },
    { store: 'rows', id: 'r1' },
  ]);
  expect(await rowsIn(store)).toEqual([]);
  expect((await store.read(placeKind)).records).toEqual([]);
});

describe('a file', () => {
  const fileOf = (places: readonly unknown[], rows: readonly unknown[]): string =>
    JSON.stringify({ file: 'holdwater-place', v: 1, edition: '0.1.0', savedAt: '2026-06-20T12:00:00.000Z', places, rows });
  const read = (text: string) => {
    const found = readFile(text);
    if (found.is !== 'read') throw new RangeError(found.say);
    return found;
  };
  it('carries the record out and in again, in one order', async () => {
    const text = textOfPlaces([aPlace()], 'here', '2026-06-20T12:00:00.000Z', { rows: [aRain(), aMove()] });
    const found = read(text);
    expect(found.rows).toEqual([aMove(), aRain()]);
    const store = memoryStore('chosen', { by: 'x' });
    const [coming] = previewOf(found, { places: [], rows: [] });
    if (coming === undefined) throw new RangeError('nothing is coming');
    expect(coming.rowsSay).toBe('Its record: 2 lines. 2 new here.');
    await bringIn(store, [{ coming }]);
    expect(textOfPlaces((await store.read(placeKind)).records, 'here', '2026-06-20T12:00:00.000Z', { rows: await rowsIn(store) })).toBe(text);
  });
  it('tells what of a record is new, changed and here already, and is ticked for a new line alone', () => {
    const later = aMove({ outDay: '2026-05-08', rev: 2, past: ['1-aaaaaa', '2-bbbbbb'] });
    const [coming] = previewOf({ places: [aPlace()], rows: [later, aRain(), aHeight()] }, { places: [aPlace()], rows: [aMove(), aRain()] });
    expect(coming).toMatchObject({ standing: 'same', isPicked: true, rowsSay: 'Its record: 3 lines. 1 new here, 1 changed since, 1 here already.' });
    const [same] = previewOf({ places: [aPlace()], rows: [aRain()] }, { places: [aPlace()], rows: [aRain()] });
    expect(same?.isPicked).toBe(false);
  });
  it('sets aside lines that cannot be read, that stand twice, or whose place is not there', () => {
    const found = read(fileOf([aPlace()], [aRain(), aRain(), { ...aMove(), stock: 'cows' }, aHay({ placeId: 'elsewhere' })]));
    expect(found.rows).toEqual([aRain()]);
    expect(found.aside.map(({ why }) => why)).toEqual([
      'It stands in this file twice.',
      'What stands at “stock” cannot be used.',
      'Its place is not in this file, or could not be read.',
    ]);
  });
  it('of a namesake brings its record to the place that is here', async () => {
    const store = memoryStore('chosen', { by: 'x' });
    await store.save(placeKind, [{ before: null, after: aPlace({ id: 'mine' }) }]);
    const [coming] = previewOf({ places: [aPlace()], rows: [aRain()] }, { places: [aPlace({ id: 'mine' })], rows: [] });
    if (coming === undefined) throw new RangeError('nothing is coming');
    await bringIn(store, [{ coming, isNamesake: true }]);
    expect((await rowsIn(store)).map(({ placeId }) => placeId)).toEqual(['mine']);
  });
});
