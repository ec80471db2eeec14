import { describe, expect, it } from 'vitest';
import { dayIn } from '../../src/place/record/days.ts';
import { baleOf, standingOn } from '../../src/place/record/hayFed.ts';
import { aMove } from './aRow.ts';

describe('hay that is fed', () => {
  it('is of the largest stack whose bales were weighed, wherever it stands in the list', () => {
    const stacks = [
      { id: 'a', baleCount: 10, baleLb: 900, moisturePercent: 12 },
      { id: 'b', baleCount: 200 },
      { id: 'c', baleCount: 40, baleLb: 1100 },
    ];
    expect(baleOf({ hay: { stacks } })).toEqual({ baleLb: 1100 });
    expect(baleOf({ hay: { stacks: stacks.slice(0, 2) } })).toEqual({ baleLb: 900, moisturePercent: 12 });
    expect(baleOf({ hay: { stacks: [{ id: 'b', baleCount: 200 }], bought: { baleLb: 1000, moisturePercent: 15 } } })).toEqual({
      baleLb: 1000,
      moisturePercent: 15,
    });
    expect(baleOf({})).toEqual({});
  });
  const rows = [
    aMove({ id: 'm1', paddockId: 'low', inDay: '2026-05-01', outDay: '2026-05-08' }),
    aMove({ id: 'm2', paddockId: 'high', inDay: '2026-05-08' }),
    aMove({ id: 'm3', paddockId: 'creek', herdNumber: 2, inDay: '2026-05-03' }),
  ];
  it.each([
    ['2026-04-30', []],
    ['2026-05-02', ['low']],
    ['2026-05-07', ['low', 'creek']],
    // They moved that day: what is fed behind the move is fed where they are.
    ['2026-05-08', ['high', 'creek']],
    ['2026-06-01', ['high', 'creek']],
  ] as const)('of %s goes to where they stood', (day, stood) => {
    expect(standingOn(rows, dayIn(day)).map(({ paddockId }) => paddockId)).toEqual(stood);
  });
});
