import { describe, expect, it } from 'vitest';
import { need, type Rule } from '../../calculators/math/need.ts';

const keeps = (value: number, rule?: Rule): boolean => {
  try {
    need('f', 'rainMm', value, rule);
    return true;
  } catch {
    return false;
  }
};

describe('a rule for a number', () => {
  it.each<readonly [Rule, kept: readonly number[], broken: readonly number[]]>([
    [{}, [-1, 0, 1e300], []],
    [{ atLeast: 2 }, [2, 3], [1.9]],
    [{ above: 2 }, [2.1], [2, 1]],
    [{ atMost: 2 }, [2, -5], [2.1]],
    [{ below: 2 }, [1.9], [2, 3]],
    [{ whole: true }, [0, -3], [0.5]],
    [{ whole: false }, [0.5], []],
    [{ atLeast: 1, atMost: 12, whole: true }, [1, 12], [0, 13, 1.5]],
    [{ above: 0, below: 1 }, [0.5], [0, 1]],
  ])('%j is kept and broken', (rule, kept, broken) => {
    expect(kept.filter((value) => !keeps(value, rule))).toEqual([]);
    expect(broken.filter((value) => keeps(value, rule))).toEqual([]);
    expect([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY].filter((value) => keeps(value, rule))).toEqual([]);
  });
  it('whose bound is no number is never kept', () => {
    for (const key of ['atLeast', 'above', 'atMost', 'below']) expect(keeps(1, { [key]: Number.NaN }), key).toBe(false);
  });
  it('is told with the function, the number and all that it asks', () => {
    expect(() => need('f', 'months', 13, { atLeast: 1, atMost: 12, whole: true })).toThrow(
      'f needs months a whole number and at least 1 and at most 12, got 13',
    );
    expect(() => need('f', 'rainMm', Number.NaN)).toThrow('f needs rainMm finite, got NaN');
  });
});
