import type { HayRow, HeightRow, MoveRow, PlanRow, RainRow } from '../../src/place/model/row.ts';

const head = (id: string): Pick<RainRow, 'id' | 'rev' | 'past' | 'changedBy' | 'changedAt' | 'v' | 'placeId'> => ({
  id,
  rev: 1,
  past: ['1-aaaaaa'],
  changedBy: 'first window',
  changedAt: '2026-06-01T08:00:00.000Z',
  v: 1,
  placeId: 'p1',
});

/** 45 cows of 30 lb a day on Low bench, from May 1. */
export const aMove = (more: Partial<MoveRow> = {}): MoveRow => ({
  is: 'move',
  ...head('m1'),
  paddockId: 'low',
  herdNumber: 1,
  inDay: '2026-05-01',
  stock: [{ kind: 'cow', countHead: 45, weightLb: 1250, lbPerDay: 30 }],
  ...more,
});
export const aHeight = (more: Partial<HeightRow> = {}): HeightRow => ({
  is: 'height',
  ...head('h1'),
  paddockId: 'low',
  day: '2026-05-20',
  heightIn: 4,
  ...more,
});
export const aHay = (more: Partial<HayRow> = {}): HayRow => ({
  is: 'hay',
  ...head('y1'),
  paddockId: 'low',
  day: '2026-05-03',
  baleCount: 1,
  baleLb: 1000,
  moisturePercent: 10,
  ...more,
});
export const aRain = (more: Partial<RainRow> = {}): RainRow => ({ is: 'rain', ...head('r1'), day: '2026-05-04', days: 1, amountIn: 0.5, ...more });
export const aPlan = (more: Partial<PlanRow> = {}): PlanRow => ({
  is: 'plan',
  ...head('n1'),
  paddockId: 'high',
  herdNumber: 1,
  inDay: '2026-05-08',
  outDay: '2026-05-15',
  lookDay: '2026-05-05',
  ...more,
});
