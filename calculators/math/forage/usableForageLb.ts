import { need } from '../need.ts';

/**
 * Forage of a place that stock can reach: the sum over its parts of A u M, with A = areaAc, u = usableShare, M = lbPerAc.
 * @param parts - For each part: area, acres, at least 0; share that stock use, 0 to 1; forage, lb of dry matter per acre, at least 0
 * @returns Forage within reach, lb of dry matter; still to be multiplied by the share that is eaten
 * @throws RangeError if a value is outside its range
 * @source rangelands-gateway-matching, step a
 * @example usableForageLb([{ areaAc: 100, usableShare: 1, lbPerAc: 1000 }, { areaAc: 100, usableShare: 0.5, lbPerAc: 1000 }]) //=> 150000
 */
export function usableForageLb(parts: readonly { readonly areaAc: number; readonly usableShare: number; readonly lbPerAc: number }[]): number {
  return parts.reduce((sum, { areaAc, usableShare, lbPerAc }) => {
    need('usableForageLb', 'areaAc', areaAc, { atLeast: 0 });
    need('usableForageLb', 'usableShare', usableShare, { atLeast: 0, atMost: 1 });
    need('usableForageLb', 'lbPerAc', lbPerAc, { atLeast: 0 });
    return sum + areaAc * usableShare * lbPerAc;
  }, 0);
}
