import { expect } from 'vitest';

/** Two numbers that may differ by `within`: half of the last printed digit, or the last bits of a sum worked out another way. */
export function near(ours: number | null | undefined, theirs: number | null | undefined, within: number): void {
  expect(Math.abs((ours ?? Number.NaN) - (theirs ?? Number.NaN)), `${ours} against ${theirs}`).toBeLessThanOrEqual(within);
}
