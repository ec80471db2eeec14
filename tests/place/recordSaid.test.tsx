// What the record says of itself where it is read, drawn without a browser.
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Row } from '../../src/place/model/row.ts';
import { aLoad } from '../../src/place/record/loads.ts';
import { staysOf } from '../../src/place/record/stays.ts';
import { hayWords } from '../../src/place/ui/RecordRows.tsx';
import { SumsDoubted } from '../../src/place/ui/RecordSums.tsx';
import { aPlace } from './aPlace.ts';
import { counting, lowToHigh, today } from './aRecord.ts';
import { aMove } from './aRow.ts';

describe('by the sums of a year', () => {
  const doubts = (rows: readonly Row[], year = 2026): string =>
    render(<SumsDoubted stays={staysOf(aPlace(), rows, counting)} year={year} todayDay={today} />);
  it('nothing is said where all of it can be', () => {
    expect(doubts(lowToHigh)).toBe('');
  });
  it('it is said that a herd in two places at once counts in both, in the year of either', () => {
    const twice = [...lowToHigh.slice(0, 2), aMove({ id: 'm4', inDay: '2026-05-15', outDay: '2026-05-22' })];
    expect(doubts(twice)).toContain(
      'In two places at once, and counted in both: herd 1 on High bench, May 8 to May 20, and on Low bench, May 15 to May 22.',
    );
    expect(doubts(twice, 2025)).toBe('');
    expect(
      doubts([aMove({ inDay: '2025-12-20', outDay: '2026-02-01' }), aMove({ id: 'm2', paddockId: 'high', inDay: '2026-01-10' })], 2025),
    ).toContain('herd 1 on Low bench, Dec 20, 2025 to Feb 1, and on High bench, Jan 10 to now.');
  });
  it('it is said that a stay that ends before it begins counts in none', () => {
    const said = doubts([aMove({ outDay: '2026-04-01' })]);
    expect(said).toContain('Not in the sums, because they went out before they came in: Low bench, May 1 to Apr 1.');
    expect(said).not.toContain('In two places');
  });
});

it('hay is told by its bales, and a load of a table by its pounds', () => {
  expect([1, 2, 2.5].map((baleCount) => hayWords({ baleCount }, 'us'))).toEqual(['1 bale', '2 bales', '2.5 bales']);
  expect(hayWords(aLoad(5100), 'us').replace('\u00a0', ' ')).toBe('5,100 lb dry');
});
