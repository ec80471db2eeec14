import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayTicks, niceTicks, wholeTicks } from '../../calculators/ui/pictures/axis.ts';
import { depthMarks } from '../../calculators/ui/pictures/face/tape.ts';

describe('axes', () => {
  it('names days so far apart that names of 56 px stand free, the last one inside', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 800 }), fc.integer({ min: 190, max: 1600 }), (days, widthPx) => {
        const at = dayTicks(0, days, widthPx).map((day) => (day * widthPx) / days);
        for (const [index, x] of at.entries()) if (index > 0) expect(x - (at[index - 1] ?? 0)).toBeGreaterThan(56);
        expect((at.at(-1) ?? 0) + 56).toBeLessThanOrEqual(widthPx);
      }),
    );
  });
  it('marks the tape so that its numbers stand free, and none close to the foot of the cut', () => {
    for (const system of ['us', 'si'] as const)
      for (let deepIn = 9; deepIn <= 200; deepIn += 1) {
        const least = deepIn / 7;
        const marks = depthMarks(deepIn, least, system);
        const perIn = system === 'us' ? 1 : 2.54;
        expect(marks.length).toBeGreaterThan(1);
        for (const [index, mark] of marks.entries()) expect((mark - (marks[index - 1] ?? 0)) / perIn).toBeGreaterThanOrEqual(least - 1e-9);
        expect((marks.at(-1) ?? 0) / perIn).toBeLessThan(deepIn - least * 0.39);
      }
    // Threes, sixes and feet as a tape has them; centimeters by fives and tens.
    expect(depthMarks(12, 2, 'us')).toEqual([3, 6, 9]);
    expect(depthMarks(30, 5, 'us')).toEqual([6, 12, 18, 24]);
    expect(depthMarks(12, 1.9, 'si')).toEqual([5, 10, 15, 20, 25]);
  });
  it('cuts an axis at round numbers', () => {
    expect(niceTicks(0, 1600, 4)).toEqual([0, 500, 1000, 1500]);
    expect(niceTicks(0, 0.7, 4)).toEqual([0, 0.2, 0.4, 0.6]);
    expect(niceTicks(-3, 3, 3)).toEqual([-2, 0, 2]);
    expect(niceTicks(5, 5, 4)).toEqual([5]);
  });
  it('marks no half of what is counted', () => {
    expect(wholeTicks(niceTicks(1, 11, 4))).toEqual([5, 10]);
    expect(wholeTicks(niceTicks(0, 1, 3))).toEqual([0, 1]);
    // Else there would be no axis.
    expect(wholeTicks(niceTicks(0, 0.7, 4))).toEqual([0, 0.2, 0.4, 0.6]);
  });
});
