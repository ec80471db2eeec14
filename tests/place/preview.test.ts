import { describe, expect, it } from 'vitest';
import { bringIn, joinedOf } from '../../src/place/files/merge.ts';
import { previewOf } from '../../src/place/files/preview.ts';
import { sameNames } from '../../src/place/files/sameNames.ts';
import type { Place } from '../../src/place/model/place.ts';
import { placeKind } from '../../src/place/store/kinds.ts';
import { memoryStore } from '../../src/place/store/openStore.ts';
import { rowKind } from '../../src/place/store/rowKind.ts';
import { aPlace, withPasture } from './aPlace.ts';
import { aMove } from './aRow.ts';

const only = (...places: readonly Place[]) => ({ places, rows: [] });

describe('the preview', () => {
  const here = aPlace({ rev: 2, past: ['1-aaaaaa', '2-bbbbbb'] });
  it('tells each place, and ticks what would change something', () => {
    const there: readonly Place[] = [
      aPlace({ id: 'other', name: 'Lease' }),
      { ...here },
      aPlace({ rev: 3, past: [...here.past, '3-cccccc'], name: 'Changed' }),
      aPlace({ past: ['1-aaaaaa'], name: 'Old' }),
      aPlace({ past: ['1-aaaaaa', '2-dddddd'], name: 'Apart' }),
      aPlace({ id: 'twin', name: ' home PLACE' }),
    ];
    expect(there.flatMap((place) => previewOf(only(place), only(here))).map(({ standing, isPicked, says }) => [standing, isPicked, says])).toEqual([
      ['new', true, 'New here.'],
      ['same', false, 'The same as here.'],
      ['later', true, 'Changed since it was saved here. It takes the place of what is here.'],
      ['earlier', false, 'Older than what is here. It changes nothing.'],
      ['both', true, 'Changed here and in the file. What differs is kept twice, for you to pick.'],
      ['new', false, 'A place of this name is here already. Is it another place, or the same?'],
    ]);
  });
  it('writes nothing until something is picked, then all of that in one step', async () => {
    const store = memoryStore('chosen', { by: 'this window' });
    await store.save(placeKind, [{ before: null, after: here }]);
    const later = aPlace({ rev: 3, past: [...here.past, '3-cccccc'], name: 'Changed' });
    const [first, second] = previewOf(only(later, aPlace({ id: 'other', name: 'Lease' })), only(here));
    if (!first || !second) throw new RangeError('two places are in it');
    expect((await store.read(placeKind)).records).toEqual([here]);
    await bringIn(store, [{ coming: first }, { coming: second }]);
    expect((await store.read(placeKind)).records).toEqual([later, second.place]);
  });
  it('keeps both of what went apart, and joins a namesake that somebody calls the same', async () => {
    const store = memoryStore('chosen', { by: 'this window' });
    await store.save(placeKind, [{ before: null, after: here }]);
    const [coming] = previewOf(
      only(aPlace({ id: 'twin', past: ['1-eeeeee'], hotF: 99, changedBy: 'the phone', yearRainIn: 21 })),
      only({ ...here, hotF: 90 }),
    );
    if (!coming) throw new RangeError('it is in the file');
    await store.save(placeKind, [{ before: here, after: { ...here, hotF: 90 } }]);
    const [saved] = await bringIn(store, [{ coming, isNamesake: true }]);
    expect(saved).toMatchObject({
      is: 'saved',
      clashes: 1,
      value: { id: 'p1', hotF: 90, yearRainIn: 21, clash: [{ path: 'hotF', other: '99', otherBy: 'the phone' }] },
    });
    expect((await store.read(placeKind)).records).toHaveLength(1);
  });
  const theirs = aPlace({
    id: 'twin',
    past: ['1-eeeeee'],
    pastures: [
      { id: 'x1', name: ' low Bench', areaAc: 85, isCounted: true, soilId: 'x4', paddocks: [{ id: 'x5', name: '1', areaAc: 40 }] },
      { id: 'x2', name: 'Creek', areaAc: 30, isCounted: true, paddocks: [] },
    ],
    soils: [{ id: 'x4', name: 'Loam', layers: [] }],
    herd: [{ id: 'x3', kind: 'cow', countHead: 40, weightLb: 1250 }],
  });
  it('counts pastures, soils and herds of one name once, where two copies of a place are joined, and keeps the record on its ground', async () => {
    const ours = withPasture(aPlace({ soils: [{ id: 'loam', name: 'Loam', layers: [] }] }), 'low', { paddocks: [{ id: 'one', name: '1' }] });
    const moved = aMove({ id: 'm', placeId: 'twin', paddockId: 'x5' });
    const [coming] = previewOf({ places: [theirs], rows: [moved] }, { places: [ours], rows: [] });
    if (!coming) throw new RangeError('it is in the file');
    expect(sameNames(ours, theirs).names).toEqual(['Low bench', 'Loam', 'cow']);
    expect(joinedOf({ coming, isNamesake: true })?.pastures.map(({ id, areaAc }) => [id, areaAc])).toEqual([
      ['low', 85],
      ['high', 120],
      ['x2', 30],
    ]);
    expect(joinedOf({ coming, isNamesake: true, isApart: true })?.pastures).toHaveLength(4);
    const store = memoryStore('chosen', { by: 'this window' });
    await store.save(placeKind, [{ before: null, after: ours }]);
    await bringIn(store, [{ coming, isNamesake: true }]);
    const [place] = (await store.read(placeKind)).records;
    expect(place?.pastures.map(({ id }) => id)).toEqual(['low', 'high', 'x2']);
    expect(place?.pastures[0]).toMatchObject({ soilId: 'loam', paddocks: [{ id: 'one', areaAc: 40 }] });
    expect(place?.soils).toHaveLength(1);
    // What differs is asked about, not added up.
    expect(place?.herd.map(({ countHead }) => countHead)).toEqual([45]);
    expect(place?.clash?.map(({ path, other }) => [path, other])).toEqual([
      ['pastures/low/name', '" low Bench"'],
      ['herd/cows/countHead', '40'],
    ]);
    expect((await store.read(rowKind)).records).toMatchObject([{ placeId: 'p1', paddockId: 'one' }]);
  });
  it('counts them once, too, where a place went apart on two devices and both added the same pasture', () => {
    const added = (id: string, past: string): Place => ({
      ...aPlace({ rev: 2, past: ['1-aaaaaa', past] }),
      pastures: [...aPlace().pastures, { id, name: 'Creek', areaAc: 30, isCounted: true, paddocks: [] }],
    });
    const [coming] = previewOf(only(added('theirs', '2-bbbbbb')), only(added('ours', '2-cccccc')));
    if (!coming) throw new RangeError('it is in the file');
    expect(coming.standing).toBe('both');
    expect(joinedOf({ coming })?.pastures.map(({ id }) => id)).toEqual(['low', 'high', 'ours']);
    expect(joinedOf({ coming, isApart: true })?.pastures).toHaveLength(4);
  });
});
