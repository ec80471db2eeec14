import { describe, expect, it } from 'vitest';
import type { NumberQuantity } from '../../calculators/kit/quantities.ts';
import { difference } from '../../calculators/ui/ResultsList.tsx';
import type { UnitName } from '../../calculators/units/units.ts';

const amount = (unit: UnitName, digits: number): NumberQuantity => ({ kind: 'number', label: 'Amount', symbol: 'x', unit, digits });

// Worked by hand: what the reader takes from the two numbers on the screen.
describe('the difference between this and that', () => {
  it('is the one between the numbers as printed', () => {
    expect(difference(4.4, 9.6, amount('d', 0), 'us')).toBe('+6 days');
    expect(difference(9.6, 4.4, amount('d', 0), 'us')).toBe('−6 days');
    expect(difference(1.44, 1.56, amount('in', 1), 'us')).toBe('+0.2 in');
    expect(difference(4.4, 3.6, amount('d', 0), 'us')).toBe('0 days');
  });
  it('is told in the reader’s units, and no finer than the coarser of the two', () => {
    expect(difference(1, 2, amount('in', 1), 'si')).toBe('+26 mm');
    expect(difference(4.4, 120, { ...amount('ton', 0), significant: 2 }, 'us')).toBe('+120 tons');
  });
  it('counts days of the calendar', () => {
    expect(difference(20_000, 20_003, { kind: 'day', label: 'Day' }, 'us')).toBe('3 days later');
  });
});
