import type { Place } from '../../src/place/model/place.ts';

/** A small place to change. */
export const aPlace = (more: Partial<Place> = {}): Place => ({
  id: 'p1',
  rev: 1,
  past: ['1-aaaaaa'],
  changedBy: 'first window',
  changedAt: '2026-06-01T08:00:00.000Z',
  v: 3,
  name: 'Home place',
  soils: [],
  pastures: [
    { id: 'low', name: 'Low bench', areaAc: 85, isCounted: true, paddocks: [] },
    { id: 'high', name: 'High bench', areaAc: 120, isCounted: true, paddocks: [] },
  ],
  herd: [{ id: 'cows', kind: 'cow', countHead: 45, weightLb: 1250 }],
  water: [],
  ...more,
});
/** The same with a change in one pasture. */
export const withPasture = (place: Place, id: string, more: Partial<Place['pastures'][number]>): Place => ({
  ...place,
  pastures: place.pastures.map((each) => (each.id === id ? { ...each, ...more } : each)),
});
