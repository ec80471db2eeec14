import { describe, expect, it } from 'vitest';
import { amount } from '../../src/place/ui/fields/field.ts';
import { visitFields } from '../../src/place/ui/fields/visit.ts';
import { daysWords } from '../../src/place/ui/recordWords.ts';
import { saidOf } from '../../src/place/ui/told.ts';

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
