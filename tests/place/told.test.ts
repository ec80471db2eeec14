import { describe, expect, it } from 'vitest';
import { amount } from '../../src/place/ui/fields/field.ts';
import { visitFields } from '../../src/place/ui/fields/visit.ts';
import { holds } from '../../src/place/ui/holds.ts';
import { daysWords } from '../../src/place/ui/recordWords.ts';
import { saidOf } from '../../src/place/ui/told.ts';
import { visitTold } from '../../src/place/visit/visitWords.ts';
import { aPlace } from './aPlace.ts';
import { aVisit } from './aVisit.ts';

const normal = amount('normalLbPerAc', 'Yield in a normal year', 'lb/ac', [10, 50_000], 2400);

describe('what is told of a place', () => {
  it.each([
    [2400, '2,400 lb/ac'],
    [950, '950 lb/ac'],
    [12_500, '12,500 lb/ac'],
    [1234.5, '1,234.5 lb/ac'],
  ])('has its commas, and none behind the point: %s', (normalLbPerAc, words) => {
    expect(saidOf({ normalLbPerAc }, normal, 'us')).toBe(words);
  });
  it('leaves as it is what somebody typed otherwise', () => {
    expect(saidOf({ normalLbPerAc: 2400, typed: { normalLbPerAc: '2400 lb/ac' } }, normal, 'us')).toBe('2400 lb/ac');
  });
  it('writes a day as a person does', () => {
    const [day] = visitFields;
    if (day === undefined) throw new RangeError('a visit has no fields');
    expect(saidOf({ day: '2026-05-13' }, day, 'us')).toBe('May 13, 2026');
  });
  it('stands behind its dollar', () => {
    expect(saidOf({ sale: 1900 }, amount('sale', 'Cow, sold', 'usd', [1, 90_000], 1900), 'us')).toBe('$1,900');
  });
});

it('tells days of grazing by the half', () => {
  expect([0.5, 1, 1.5, 1200].map(daysWords)).toEqual(['half a day', '1 day', '1.5 days', '1,200 days']);
});

it('counts one animal as one, and leaves a name as it was given', () => {
  const herd = [
    { id: 'a', kind: 'cow', countHead: 1 },
    { id: 'b', kind: 'heifer', countHead: 12 },
    { id: 'c', kind: 'ewe', countHead: 60, name: 'Lou’s flock' },
    { id: 'd', kind: 'bull' },
  ] as const;
  expect(holds(aPlace({ herd: [...herd] }), 'us')['stock']).toBe('1 cow, 12 bred heifers, 60 Lou’s flock, bulls');
});

it('tells two visits of one day apart', () => {
  const visits = [aVisit({ id: 'b', pastureIds: [] }), aVisit({ id: 'a', pastureIds: ['high'] }), aVisit({ id: 'c', day: '2026-07-01' })] as const;
  expect(visits.map((each) => visitTold(aPlace(), each, visits))).toEqual([
    'Jun 20, 2026 (2 of 2)',
    'Jun 20, 2026 (1 of 2), High bench',
    'Jul 1, 2026, Low bench and High bench',
  ]);
});
