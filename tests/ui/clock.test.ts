import { describe, expect, it } from 'vitest';
import { number } from '../../calculators/kit/inputs.ts';
import { callText, clockAt, clockKept, clockOf, clockText, measuredText, stretchText, takenText } from '../../calculators/ui/tools/clock.ts';

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
  it('tells a time that was taken to the second', () => {
    expect([0.4, 7.6, 59.7, 252.2].map(takenText)).toEqual(['0 seconds', '8 seconds', '1 minute 0 seconds', '4 minutes 12 seconds']);
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
    const field = (unit: 's' | 'min' | 'hr', whole = false) => number('Time', 't', unit, [0, 1e6], 1, { whole });
    const alone = (text: string) => text.split('\u00a0');
    expect(alone(measuredText(42.437, field('s'), 'us'))).toEqual(['42.4', 's']);
    expect(alone(measuredText(42.6, field('s', true), 'us'))).toEqual(['43', 's']);
    expect(alone(measuredText(90, field('min'), 'si'))).toEqual(['1.5', 'min']);
    expect(alone(measuredText(5400, field('hr'), 'us'))).toEqual(['1.5', 'hr']);
  });
});

describe('a clock that runs', () => {
  const start = { wallMs: 1_000_000, steadyMs: 1_000_000, elapsedMs: 0 };
  const hour = 3_600_000;
  const later = (passedMs: number, wallJumpMs = 0, sleptMs = 0) => ({
    wallMs: start.wallMs + passedMs + wallJumpMs,
    steadyMs: start.steadyMs + passedMs - sleptMs,
  });
  it('does not follow the device’s clock while it is in view, whichever way that is set', () => {
    expect(clockAt(start, later(12_400), false).elapsedMs).toBe(12_400);
    expect(clockAt(start, later(12_400, hour), false).elapsedMs).toBe(12_400);
    expect(clockAt(start, later(12_400, -hour), false).elapsedMs).toBe(12_400);
  });
  it('counts the time behind a locked screen, where the steady clock may sleep', () => {
    expect(clockAt(start, later(180_000, 0, 170_000), true).elapsedMs).toBe(180_000);
    expect(clockAt(start, later(180_000), true).elapsedMs).toBe(180_000);
  });
  it('loses nothing when the clock is set back behind a locked screen, and never runs backward', () => {
    expect(clockAt(start, later(180_000, -hour), true).elapsedMs).toBe(180_000);
    expect(clockAt({ ...start, elapsedMs: 5000 }, later(0, -hour, hour), true).elapsedMs).toBe(5000);
  });
  it('adds up over looks, with a jump of the device’s clock between them', () => {
    let clock: ReturnType<typeof clockAt> = start;
    for (const [passed, jump] of [
      [200, 0],
      [400, hour],
      [600, hour],
      [800, -hour],
    ] as const)
      clock = clockAt(clock, later(passed, jump), false);
    expect(clock.elapsedMs).toBe(800);
  });
  it('is kept as a text, and one that is none does not run', () => {
    const clock = { wallMs: 1, steadyMs: 2.5, elapsedMs: 3 };
    expect(clockOf(clockKept(clock))).toEqual(clock);
    expect(clockOf('1700000000000'), 'as older pages kept it').toEqual({ wallMs: 1_700_000_000_000, steadyMs: 1_700_000_000_000, elapsedMs: 0 });
    for (const text of [null, '', 'x', '1|x|0', '1|2|x']) expect(clockOf(text)).toBeUndefined();
  });
});
