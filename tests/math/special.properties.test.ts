import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { betaQuantile } from '../../calculators/math/special/betaQuantile.ts';
import { digamma, trigamma } from '../../calculators/math/special/digamma.ts';
import { exactBinomialInterval } from '../../calculators/math/special/exactBinomialInterval.ts';
import { inverseNormal } from '../../calculators/math/special/inverseNormal.ts';
import { lnGamma } from '../../calculators/math/special/lnGamma.ts';
import { normalProbability } from '../../calculators/math/special/normalProbability.ts';
import { regularizedIncompleteBeta } from '../../calculators/math/special/regularizedIncompleteBeta.ts';
import { regularizedIncompleteGamma, upperRegularizedIncompleteGamma } from '../../calculators/math/special/regularizedIncompleteGamma.ts';
import { between } from '../support/numbers.ts';

const near = (ours: number, wanted: number, allowed: number): void => {
  expect(Math.abs(ours - wanted)).toBeLessThanOrEqual(allowed);
};

describe('gamma functions', () => {
  it('keep their recurrences', () => {
    fc.assert(
      fc.property(between(0.05, 200), (x) => {
        near(lnGamma(x + 1), lnGamma(x) + Math.log(x), 1e-12 * (1 + Math.abs(lnGamma(x))));
        near(digamma(x + 1), digamma(x) + 1 / x, 1e-12 * (1 + 1 / x));
        near(trigamma(x + 1), trigamma(x) - 1 / (x * x), 1e-12 * (1 + 1 / (x * x)));
      }),
    );
  });
  it('P and Q make one, P rises with x, and P(a + 1, x) = P(a, x) − x^a e^(−x) / Γ(a + 1)', () => {
    fc.assert(
      fc.property(between(0.05, 300), between(0, 400), between(0, 5), (shape, x, more) => {
        const lower = regularizedIncompleteGamma(shape, x);
        near(lower + upperRegularizedIncompleteGamma(shape, x), 1, 1e-14);
        expect(regularizedIncompleteGamma(shape, x + more)).toBeGreaterThanOrEqual(lower - 1e-14);
        const term = x === 0 ? 0 : Math.exp(shape * Math.log(x) - x - lnGamma(shape + 1));
        near(regularizedIncompleteGamma(shape + 1, x), lower - term, 1e-12);
      }),
    );
  });
  it('P(n, x) is what a Poisson count leaves', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), between(0, 80), (count, x) => {
        let term = Math.exp(-x);
        let below = 0;
        for (let each = 0; each < count; each += 1) {
          below += term;
          term *= x / (each + 1);
        }
        near(upperRegularizedIncompleteGamma(count, x), below, 1e-12);
      }),
    );
  });
});

describe('the normal distribution', () => {
  it('goes there and back', () => {
    fc.assert(fc.property(between(-8, 5), (z) => near(inverseNormal(normalProbability(z)), z, 1e-9)));
    fc.assert(fc.property(between(1e-12, 1 - 1e-12), (share) => near(normalProbability(inverseNormal(share)), share, 1e-13)));
  });
  it('is even-handed', () => {
    fc.assert(fc.property(between(0, 6), (z) => near(normalProbability(z) + normalProbability(-z), 1, 1e-15)));
    expect(inverseNormal(0.5)).toBe(0);
  });
});

describe('the beta distribution', () => {
  it('mirrors and inverts', () => {
    fc.assert(
      fc.property(between(0.001, 0.999), between(0.2, 60), between(0.2, 60), (x, a, b) => {
        near(regularizedIncompleteBeta(x, a, b) + regularizedIncompleteBeta(1 - x, b, a), 1, 1e-11);
      }),
    );
    fc.assert(
      fc.property(between(0.001, 0.999), between(0.5, 60), between(0.5, 60), (share, a, b) => {
        near(regularizedIncompleteBeta(betaQuantile(share, a, b), a, b), share, 1e-9);
      }),
    );
  });
  it('with whole shapes is a sum of binomial chances', () => {
    fc.assert(
      fc.property(between(0.01, 0.99), fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 30 }), (x, trials, asked) => {
        const atLeast = Math.min(trials, Math.max(1, asked));
        let sum = 0;
        for (let k = atLeast; k <= trials; k += 1) {
          const ways = lnGamma(trials + 1) - lnGamma(k + 1) - lnGamma(trials - k + 1);
          sum += Math.exp(ways + k * Math.log(x) + (trials - k) * Math.log1p(-x));
        }
        near(regularizedIncompleteBeta(x, atLeast, trials - atLeast + 1), sum, 1e-11);
      }),
    );
  });
});

describe('the exact interval for a share', () => {
  const cases = fc.tuple(fc.integer({ min: 1, max: 200 }), between(0, 1)).map(([trials, part]) => ({ trials, successes: Math.round(part * trials) }));
  it('holds the share seen, mirrors, and narrows with confidence', () => {
    fc.assert(
      fc.property(cases, ({ successes, trials }) => {
        const { lowerShare, upperShare } = exactBinomialInterval({ successes, trials });
        const mirrored = exactBinomialInterval({ successes: trials - successes, trials });
        const narrower = exactBinomialInterval({ successes, trials, confidence: 0.8 });
        expect(lowerShare).toBeLessThanOrEqual(successes / trials);
        expect(upperShare).toBeGreaterThanOrEqual(successes / trials);
        near(lowerShare, 1 - mirrored.upperShare, 1e-10);
        expect(narrower.lowerShare).toBeGreaterThanOrEqual(lowerShare);
        expect(narrower.upperShare).toBeLessThanOrEqual(upperShare);
      }),
      { numRuns: 50 },
    );
  });
  it('ends where the tails hold half of what is left', () => {
    fc.assert(
      fc.property(
        cases.filter(({ successes, trials }) => successes > 0 && successes < trials),
        ({ successes, trials }) => {
          const { lowerShare, upperShare } = exactBinomialInterval({ successes, trials });
          near(regularizedIncompleteBeta(lowerShare, successes, trials - successes + 1), 0.025, 1e-10);
          near(1 - regularizedIncompleteBeta(upperShare, successes + 1, trials - successes), 0.025, 1e-10);
        },
      ),
      { numRuns: 50 },
    );
  });
});
