// What the gate tells of herds that were split, drawn without a browser. Head was counted by hand: common practice.
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Place } from '../../src/place/model/place.ts';
import type { Row } from '../../src/place/model/row.ts';
import { herdsOf } from '../../src/place/record/herds.ts';
import { GateHerds } from '../../src/place/ui/GateHerds.tsx';
import { aPlace } from './aPlace.ts';
import { today } from './aRecord.ts';
import { aMove } from './aRow.ts';

const told = (rows: readonly Row[], place: Place = aPlace()): string =>
  render(<GateHerds place={place} herds={herdsOf(place, rows, today)} todayDay={today} />)
    .replaceAll(/<\/li>/g, '\n')
    .replaceAll(/<[^>]+>/g, '')
    .trim();
const cows = (countHead: number) => ({ stock: [{ kind: 'cow' as const, countHead }] });
const high = { id: 'm2', paddockId: 'high', inDay: '2026-06-12' };
/** 25 of the 45 stay in herd 1, 20 go with herd 2. */
const inTwo = aPlace({
  herd: [
    { id: 'cows', kind: 'cow', countHead: 25 },
    { id: 'others', kind: 'cow', countHead: 20, herdNumber: 2 },
  ],
});

describe('at the gate', () => {
  it('a herd of which each part has its own line is told once, with its parts', () => {
    expect(told([aMove(cows(25)), aMove({ ...high, ...cows(20) })])).toBe(
      '45 cows in 2 parts: 25 cows on Low bench since May 1 (50 days); 20 cows on High bench since Jun 12 (8 days)',
    );
  });
  it('a herd that was written down whole on both is told once, with both', () => {
    expect(told([aMove(), aMove(high)])).toBe('45 cows on Low bench since May 1 (50 days), and on High bench since Jun 12 (8 days)');
    // What was split off has a line of its own, and the line before is from when all stood there.
    expect(told([aMove(), aMove({ ...high, ...cows(20) })])).toBe(
      '45 cows on Low bench since May 1 (50 days), and on High bench since Jun 12 (8 days)',
    );
    // Nobody counts that herd at the place.
    const unknown = aPlace({ herd: [] });
    expect(told([aMove(), aMove(high)], unknown)).toContain('45 cows on Low');
    expect(told([aMove(cows(25)), aMove({ ...high, ...cows(20) })], unknown)).toContain('45 cows in 2 parts');
  });
  it('head that the place now counts with another herd is no longer told where it stood before', () => {
    expect(told([aMove()], inTwo)).toBe('Herd 1: 25 cows on Low bench since May 1 (50 days)\nHerd 2: 20 cows stand nowhere yet');
    expect(told([aMove(), aMove({ ...high, ...cows(20), herdNumber: 2 })], inTwo)).toBe(
      'Herd 1: 25 cows on Low bench since May 1 (50 days)\nHerd 2: 20 cows on High bench since Jun 12 (8 days)',
    );
  });
  it('a herd that only the record knows may be a part of another: that is asked where all are more than the place has', () => {
    const split = aMove({ ...high, ...cows(20), herdNumber: 2 });
    expect(told([aMove(), split])).toContain(
      'That makes 65 cows, and your place has 45 cows. If herd 2 was split off, tell under Stock how many go with it.',
    );
    expect(told([aMove(cows(25)), split])).not.toContain('That makes');
  });
  it('of a herd that stands on one ground its line is told, and before a move what the place has', () => {
    expect(told([aMove(cows(40))])).toBe('40 cows on Low bench since May 1 (50 days)');
    expect(told([])).toBe('45 cows stand nowhere yet');
    expect(told([], aPlace({ herd: [] }))).toBe('The herd stand nowhere yet');
  });
});
