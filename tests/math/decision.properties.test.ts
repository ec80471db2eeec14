import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { feedDaysGained, feedDaysLost } from '../../calculators/math/decision/feedDaysLost.ts';
import { likeYearsCaughtUp } from '../../calculators/math/decision/likeYearsCaughtUp.ts';
import { relativeForageGreatBasinPercent, relativeForagePercent } from '../../calculators/math/decision/relativeForagePercent.ts';
import { yearsCaughtUp } from '../../calculators/math/drought/yearsCaughtUp.ts';
import { between } from '../support/numbers.ts';

const near = (one: number, other: number, relative = 1e-9): void => {
  expect(Math.abs(one - other)).toBeLessThanOrEqual(relative * Math.max(1, Math.abs(other)));
};

describe('years that caught up', () => {
  const record = fc.array(fc.record({ beforeIn: between(0, 20), afterIn: between(0, 20) }), { minLength: 1, maxLength: 60 });
  it('are no more than the years looked at, and fewer the more is asked', () => {
    fc.assert(
      fc.property(record, between(0, 20), between(0, 30), between(0, 10), (years, toDateIn, targetIn, more) => {
        const found = likeYearsCaughtUp(toDateIn, years, targetIn);
        expect(found.caughtUp).toBeLessThanOrEqual(found.years);
        expect(likeYearsCaughtUp(toDateIn, years, targetIn + more).caughtUp).toBeLessThanOrEqual(found.caughtUp);
        const share = found.years === 0 ? 50 : (100 * found.caughtUp) / found.years;
        expect(found.lowerPercent).toBeLessThanOrEqual(share + 1e-9);
        expect(found.upperPercent).toBeGreaterThanOrEqual(share - 1e-9);
      }),
    );
  });
  it('say nothing of a season that stands worse than any on record', () => {
    expect(likeYearsCaughtUp(1, [{ beforeIn: 2, afterIn: 8 }], 9)).toEqual({ years: 0, caughtUp: 0, lowerPercent: 0, upperPercent: 100 });
  });
  it('agree with the plain count when every year stood just as this one does', () => {
    fc.assert(
      fc.property(fc.array(between(0, 20), { minLength: 1, maxLength: 40 }), between(0, 10), between(0, 10), (restIn, toDateIn, missingIn) => {
        const alike = restIn.map((afterIn) => ({ beforeIn: toDateIn, afterIn }));
        const found = likeYearsCaughtUp(toDateIn, alike, toDateIn + missingIn);
        const plain = yearsCaughtUp({ shortfallIn: 0, normalRestIn: missingIn, restOfSeasonIn: restIn });
        // Adding and taking away the same rain may move a year that lies exactly on the edge.
        const onEdge = restIn.filter((each) => Math.abs(each - missingIn) < 1e-9).length;
        expect(Math.abs(found.caughtUp - plain.caughtUp)).toBeLessThanOrEqual(onEdge);
      }),
    );
  });
});

describe('forage and days of feed', () => {
  it('follows the rain up to normal and no further', () => {
    fc.assert(
      fc.property(between(0, 300), between(0, 100), (rain, more) => {
        for (const response of [relativeForagePercent, relativeForageGreatBasinPercent]) {
          expect(response(rain)).toBeGreaterThanOrEqual(0);
          expect(response(rain)).toBeLessThanOrEqual(100);
          expect(response(rain + more)).toBeGreaterThanOrEqual(response(rain));
        }
      }),
    );
  });
  it('shares out what the leavers would have eaten', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 1, max: 500 }), between(0, 200), (leave, stay, days) => {
        near(feedDaysGained(leave + stay, leave, days) * stay, leave * days);
      }),
    );
    fc.assert(fc.property(between(0, 365), (days) => near(feedDaysLost(days, 100) + feedDaysLost(days, 0), days)));
  });
});
