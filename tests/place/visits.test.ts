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
import { noteSchema } from '../../src/place/model/note.ts';
import { readNote, readResult, readVisit } from '../../src/place/model/readVisit.ts';
import { resultSchema } from '../../src/place/model/result.ts';
import { type Visit, visitSchema } from '../../src/place/model/visit.ts';
import { placeKind } from '../../src/place/store/kinds.ts';
import { memoryStore, openStore } from '../../src/place/store/openStore.ts';
import type { Store } from '../../src/place/store/store.ts';
import { noteKind, resultKind, visitKind } from '../../src/place/store/visitKinds.ts';
import { isUntouched, newVisit } from '../../src/place/visit/newVisit.ts';
import { root } from '../support/files.ts';
import { aPlace } from './aPlace.ts';
import { aNote, aResult, aVisit } from './aVisit.ts';
import { texts } from './texts.ts';

const opened: Store[] = [];
const open = async (by: string): Promise<Store> => {
  const store = await openStore({ by, texts: undefined });
  opened.push(store);
  return store;
};
beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});
afterEach(() => {
  for (const store of opened.splice(0)) store.close();
});

describe('a visit that is begun', () => {
  it('is untouched until something of it is told, whatever that is', () => {
    const { id, rev, past, changedBy, changedAt, v: _, placeId, day, by, ...deeds } = aVisit();
    // Who writes comes from the visit before, and is no deed of this one.
    const begun = newVisit({ id, rev, past, changedBy, changedAt }, placeId, day, by);
    expect(isUntouched(begun)).toBe(true);
    for (const [key, deed] of Object.entries(deeds)) expect(isUntouched({ ...begun, [key]: deed }), key).toBe(false);
  });
});

describe('a visit, its results and its note', () => {
  const text = readFileSync(join(root, `tests/place/fixtures/v${placeVersion}/visits.json`), 'utf8');
  it('stand in a fixture with every field used', () => {
    const found = readFile(text);
    if (found.is !== 'read') throw new RangeError(found.say);
    expect(found.aside).toEqual([]);
    for (const [schema, records] of [
      [visitSchema, found.visits],
      [resultSchema, found.results],
      [noteSchema, found.notes],
    ] as const) {
      const used = new Set(records.flatMap((each) => Object.keys(each)));
      expect(Object.keys(schema.entries).filter((key) => !used.has(key))).toEqual([]);
    }
  });
  it('come out of a file and a store as they went in, to the last byte', async () => {
    const found = readFile(text);
    if (found.is !== 'read') throw new RangeError(found.say);
    const store = memoryStore('chosen', { by: 'x' });
    await bringIn(
      store,
      previewOf(found, { places: [] }).map((coming) => ({ coming })),
    );
    const [places, visits, results, notes] = [
      (await store.read(placeKind)).records,
      (await store.read(visitKind)).records,
      (await store.read(resultKind)).records,
      (await store.read(noteKind)).records,
    ];
    expect(textOfPlaces(places, found.edition, found.savedAt, { visits, results, notes })).toBe(text);
  });
  it('are told in the preview of a file, and bring it in where only they are new', () => {
    const there = { places: [aPlace()], visits: [aVisit()], results: [aResult()], notes: [aNote()] };
    const [coming] = previewOf(there, { places: [aPlace()] });
    expect(coming).toMatchObject({ standing: 'same', visitsSay: 'Visits: 1 visit. 1 new here.', isPicked: true });
    expect(previewOf(there, there)[0]).toMatchObject({ visitsSay: 'Visits: 1 visit. 1 here already.', isPicked: false });
  });
  it('of a place that is not in the file are set aside with the reason', () => {
    const found = readFile(text.replaceAll('"placeId": "p1"', '"placeId": "p2"'));
    expect(found).toMatchObject({ is: 'read', visits: [], results: [], notes: [] });
    if (found.is === 'read')
      expect(found.aside.map(({ name }) => name)).toEqual(expect.arrayContaining(['A visit', 'A kept calculation', 'A follow-up note']));
  });
  it('refuse what does not belong, and say where', () => {
    expect(readVisit({ ...aVisit(), moon: 'full' }).is).toBe('damaged');
    expect(readVisit({ ...aVisit(), day: 'Tuesday' })).toEqual({ is: 'damaged', why: 'What stands at “day” cannot be used.' });
    expect(readResult({ ...aResult(), link: 3 }).is).toBe('damaged');
    expect(readNote({ ...aNote(), blocks: [{ id: '<b>' }] }).is).toBe('damaged');
    expect(readVisit({ ...aVisit(), v: 2 })).toEqual({ is: 'newer', v: 2 });
    expect(readResult('nothing')).toEqual({ is: 'damaged', why: 'It does not have the shape of a kept calculation.' });
  });
});

describe('two windows on one visit', () => {
  const visitIn = async (store: Store) => {
    const [visit] = (await store.pick(visitKind, ['v1'])).records;
    if (visit === undefined) throw new RangeError('no visit is kept');
    return visit;
  };
  it('each keep a result in it, and both are there', async () => {
    const [one, other] = [await open('first window'), await open('second window')];
    await one.save(visitKind, [{ before: null, after: aVisit({ results: [] }) }]);
    const before = await visitIn(one);
    for (const [store, id] of [
      [one, 'r1'],
      [other, 'r2'],
    ] as const) {
      const withOne: Visit = { ...before, results: [{ id, slug: 'ring-test', title: 'Rings' }] };
      await store.saveAll([
        { kind: visitKind, edits: [{ before, after: withOne }] },
        { kind: resultKind, edits: [{ before: null, after: aResult({ id }) }] },
      ]);
    }
    const after = await visitIn(one);
    expect(after.results.map(({ id }) => id)).toEqual(['r1', 'r2']);
    expect(after.clash).toBeUndefined();
    expect((await one.pick(resultKind, ['r1', 'r2', 'gone'])).records.map(({ id }) => id)).toEqual(['r1', 'r2']);
  });
  it('type in other fields and both are in; in the same field neither is lost', async () => {
    const [one, other] = [await open('first window'), await open('second window')];
    await one.save(visitKind, [{ before: null, after: aVisit() }]);
    const before = await visitIn(one);
    await one.save(visitKind, [{ before, after: { ...before, seen: 'One saw this.', said: 'One heard this.' } }]);
    await other.save(visitKind, [{ before, after: { ...before, seen: 'Other saw that.', nextDay: '2026-10-01' } }]);
    const after = await visitIn(one);
    expect(after).toMatchObject({ seen: 'One saw this.', said: 'One heard this.', nextDay: '2026-10-01' });
    expect(after.clash).toEqual([expect.objectContaining({ path: 'seen', other: '"Other saw that."', otherBy: 'second window' })]);
  });
});

describe('a browser that ends in mid-write', () => {
  // The second of three writes, then the third: visit, result and note are one transaction.
  it.each([1, 2])(
    'leaves a visit with its result and its note whole or not at all, ended after %s of three, and the journal brings all back',
    async (whole) => {
      const local = texts();
      const store = await openStore({ by: 'first window', texts: local });
      opened.push(store);
      await store.save(visitKind, [{ before: null, after: aVisit({ results: [], seen: 'Before.' }) }]);
      const [before] = (await store.pick(visitKind, ['v1'])).records;
      if (before === undefined) throw new RangeError('no visit is kept');
      const put = IDBObjectStore.prototype.put;
      let count = 0;
      vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value: unknown) {
        count += 1;
        if (count > whole) throw new DOMException('gone', 'AbortError');
        return put.call(this, value);
      });
      const after: Visit = { ...before, seen: 'After.', results: [{ id: 'r1', slug: 'ring-test', title: 'Rings' }] };
      await store.saveAll([
        { kind: visitKind, edits: [{ before, after }] },
        { kind: resultKind, edits: [{ before: null, after: aResult() }] },
        { kind: noteKind, edits: [{ before: null, after: aNote() }] },
      ]);
      vi.restoreAllMocks();
      expect(count).toBe(whole + 1);
      store.close();
      // Past the journal: nothing of it is in the database.
      const bare = await openStore({ by: 'a look', texts: undefined });
      opened.push(bare);
      expect((await bare.read(visitKind)).records).toMatchObject([{ seen: 'Before.', results: [] }]);
      expect((await bare.read(resultKind)).records).toEqual([]);
      expect((await bare.read(noteKind)).records).toEqual([]);
      bare.close();
      const again = await openStore({ by: 'second window', texts: local });
      opened.push(again);
      expect((await again.read(visitKind)).records).toMatchObject([{ seen: 'After.', results: [{ id: 'r1' }] }]);
      expect((await again.read(resultKind)).records).toMatchObject([{ id: 'r1' }]);
      expect((await again.read(noteKind)).records).toMatchObject([{ id: 'v1' }]);
      expect(local.map.size).toBe(0);
    },
  );
});
