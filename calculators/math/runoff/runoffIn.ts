import { need } from '../need.ts';
import { type AbstractionRatio, initialAbstractionIn } from './initialAbstractionIn.ts';

/**
 * Depth that runs off in one storm: Q = (P − Ia)² / (P − Ia + S), 0 while P is at most Ia, with P = `rainIn`, S = `retentionIn`,
 * Ia = `abstractionRatio` × S.
 * The retention must belong to the ratio; `stormRunoffIn` starts from a curve number and sees to that.
 * @param options.rainIn - Rain of the storm, inches; 0 or more
 * @param options.retentionIn - Potential retention of the same ratio (for 0.05: from `retentionAt05In`), inches; 0 or more
 * @param options.abstractionRatio - Share of the retention used up first, no unit; 0.2 or 0.05
 * @returns Runoff over the whole area, inches
 * @throws RangeError if a depth is negative or the ratio is neither 0.2 nor 0.05
 * @source tr55-1986, eq. 2-1
 * @example runoffIn({ rainIn: 3, retentionIn: 2.5, abstractionRatio: 0.2 }) //=> 1.25
 */
export function runoffIn({
  rainIn,
  retentionIn,
  abstractionRatio,
}: {
  rainIn: number;
  retentionIn: number;
  abstractionRatio: AbstractionRatio;
}): number {
  need('runoffIn', 'rainIn', rainIn, { atLeast: 0 });
  const pastAbstractionIn = rainIn - initialAbstractionIn({ retentionIn, abstractionRatio });
  return pastAbstractionIn <= 0 ? 0 : pastAbstractionIn ** 2 / (pastAbstractionIn + retentionIn);
}
