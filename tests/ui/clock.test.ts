import { describe, expect, it } from 'vitest';
import { number } from '../../calculators/kit/inputs.ts';
import { callText, clockText, measuredText, stretchText } from '../../calculators/ui/tools/clock.ts';

describe('a clock', () => {
  it('is read as clocks are', () => {
    expect([0, 7.9, 59.99, 60, 750, 3599.9, 3727].map(clockText)).toEqual(['0:00', '0:07', '0:59', '1:00', '12:30', '59:59', '1:02:07']);
  });
  it('tells a stretch of time in words', () => {
    expect([1, 5, 30, 60, 89, 90, 300].map(stretchText)).toEqual([
      '1 second',
      '5 seconds',
      '30 seconds',
      '1 minute',
      '89 seconds',
      '2 minutes',
      '5 minutes',
    ]);
  });
  it('calls each mark once, and tells how long ago a missed one was', () => {
    const [atS, says] = [
      [5, 30, 300],
      ['one', 'two', 'three'],
    ];
    expect(callText(atS, says, 0, 4.9)).toBe('');
    expect(callText(atS, says, 0, 5.1)).toBe('5 seconds: one');
    expect(callText(atS, says, 1, 30)).toBe('30 seconds: two');
    expect(callText(atS, says, 1, 300.2)).toBe('30 seconds, passed 5 minutes ago: two; 5 minutes: three');
    expect(callText(atS, says, 3, 900)).toBe('');
  });
  it('writes what it measured in the unit of its field, as a person types it', () => {
    const field = (unit: 's' | 'min' | 'hr', whole = false) =>
      number({ label: 'Time', symbol: 't', belongsTo: 'place', unit, min: 0, max: 1e6, default: 1, whole });
    const alone = (text: string) => text.split('\u00a0');
    expect(alone(measuredText(42.437, field('s'), 'us'))).toEqual(['42.4', 's']);
    expect(alone(measuredText(42.6, field('s', true), 'us'))).toEqual(['43', 's']);
    expect(alone(measuredText(90, field('min'), 'si'))).toEqual(['1.5', 'min']);
    expect(alone(measuredText(5400, field('hr'), 'us'))).toEqual(['1.5', 'hr']);
  });
});
