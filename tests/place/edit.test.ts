import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { type Place, placeSchema } from '../../src/place/model/place.ts';
import { type Changes, withChanges } from '../../src/place/ui/edit.ts';
import { aPlace } from './aPlace.ts';

const pasture = (id: string) => ({ id, name: id, isCounted: true, paddocks: [] });
const place: Place = aPlace({ pastures: ['a', 'b', 'c'].map(pasture), stationMonthsIn: Array.from({ length: 12 }, () => 2) });
const changed = (...changes: Changes): Place | undefined => {
  try {
    return withChanges(place, changes);
  } catch (error) {
    if (error instanceof TypeError) return undefined;
    throw error;
  }
};

describe('a place that is changed', () => {
  it.each<readonly [string, Changes]>([
    ['a figure', [{ path: ['pastures', 'b', 'areaAc'], to: 12 }]],
    ['a figure taken out', [{ path: ['yearRainIn'], to: undefined }]],
    ['a thing taken out of a list', [{ path: ['pastures'], to: [pasture('a'), pasture('c')] }]],
    ['a thing more', [{ path: ['pastures'], to: ['a', 'b', 'c', 'd'].map(pasture) }]],
    ['all months', [{ path: ['stationMonthsIn'], to: Array.from({ length: 12 }, (_, month) => month) }]],
    [
      'two at once',
      [
        { path: ['name'], to: 'Other' },
        { path: ['season', 'endDay'], to: '10-31' },
      ],
    ],
  ])('is one still: %s', (_, changes) => {
    const next = changed(...changes);
    expect(next).toBeDefined();
    expect(v.is(placeSchema, next)).toBe(true);
  });
  it.each<readonly [string, Changes]>([
    ['a figure past its limits', [{ path: ['pastures', 'b', 'areaAc'], to: -1 }]],
    ['a word for a figure', [{ path: ['yearRainIn'], to: 'much' }]],
    ['a field that it has not', [{ path: ['moon'], to: 'full' }]],
    ['such a field in a thing of a list', [{ path: ['pastures', 'a', 'moon'], to: 'full' }]],
    ['no name', [{ path: ['name'], to: undefined }]],
    ['no list', [{ path: ['pastures'], to: undefined }]],
    ['a thing more that is none', [{ path: ['pastures'], to: [...['a', 'b', 'c'].map(pasture), { id: 'd' }] }]],
    ['a list of as many that are none', [{ path: ['pastures'], to: [1, 2, 3] }]],
    ['eleven months', [{ path: ['stationMonthsIn'], to: Array.from({ length: 11 }, () => 2) }]],
    ['a month past its limits', [{ path: ['stationMonthsIn'], to: Array.from({ length: 12 }, () => 999) }]],
    ['more pastures than a place may have', [{ path: ['pastures'], to: Array.from({ length: 501 }, (_, index) => pasture(`p${index}`)) }]],
  ])('is none any more: %s', (_, changes) => {
    expect(changed(...changes)).toBeUndefined();
  });
});
