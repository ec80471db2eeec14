import { describe, expect, it } from 'vitest';
import type { Store } from '../../src/place/store/store.ts';
import { aPlace, withPasture } from './aPlace.ts';
import { anewForEach, one, open, save } from './aStore.ts';

anewForEach();

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
