import { expect } from 'vitest';

/** Holds a value to another within a tolerance that is written out: a count of digits would hide how wide it is. */
export const expectWithin = (ours: number, expected: number, tolerance: number): void => {
  expect(Math.abs(ours - expected), `${ours} stands off ${expected}`).toBeLessThan(tolerance);
};
