import { describe, expect, it } from 'vitest';
import { usedForms } from '../../src/place/visit/usedForms.ts';
import { aVisit } from './aVisit.ts';

const made = (...slugs: readonly string[]) => slugs.map((slug, index) => ({ id: `${slug}-${index}`, slug, title: slug }));
const lastYear = aVisit({ id: 'v0', day: '2025-06-18', results: made('cover-count', 'ring-test', 'cover-count') });

describe('the forms of a visit that come first', () => {
  it('are those of last time, in their order', () => {
    const earlier = aVisit({ id: 'v-1', day: '2024-06-18', results: made('slake-test') });
    expect(usedForms(aVisit({ results: [] }), [earlier, lastYear])).toEqual(['cover-count', 'ring-test']);
  });
  it('are its own before those, the last kept first', () => {
    expect(usedForms(aVisit({ results: made('slake-test', 'ring-test') }), [lastYear])).toEqual(['ring-test', 'slake-test', 'cover-count']);
  });
  it('are none of a later visit, of one without a calculation, or of another place', () => {
    const now = aVisit({ results: [] });
    const others = [
      now,
      aVisit({ ...lastYear, day: '2026-07-01' }),
      aVisit({ id: 'v2', day: '2026-06-01', results: [] }),
      aVisit({ ...lastYear, id: 'v3', placeId: 'p2' }),
    ];
    expect(usedForms(now, others)).toEqual([]);
  });
});
