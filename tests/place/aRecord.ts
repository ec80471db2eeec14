// A small record, and the day on which it is looked at.
import type { Row } from '../../src/place/model/row.ts';
import { dayIn } from '../../src/place/record/days.ts';
import { aMove } from './aRow.ts';

export const today = dayIn('2026-06-20');
export const counting = { todayDay: today, yardstickLbPerDay: 30 };
export const lowToHigh: readonly Row[] = [
  aMove({ outDay: '2026-05-08' }),
  aMove({ id: 'm2', paddockId: 'high', inDay: '2026-05-08', outDay: '2026-05-20' }),
  aMove({ id: 'm3', inDay: '2026-06-12' }),
];
