import { need } from '../need.ts';

/** Share of the potential retention that is used up before any rain runs off: the 1954 convention, and the one fitted to plots later. */
export type AbstractionRatio = 0.2 | 0.05;

/**
 * Rain used up before any runs off: Ia = r S, with r = `abstractionRatio` and S = `retentionIn`.
 * @param options.retentionIn - Potential retention that belongs to the same ratio (for 0.05: from `retentionAt05In`), inches; 0 or more
 * @param options.abstractionRatio - Share of the retention, no unit; 0.2 or 0.05
 * @returns Initial abstraction, inches
 * @throws RangeError if `retentionIn` is negative or the ratio is neither 0.2 nor 0.05
 * @source tr55-1986, eq. 2-2
 * @example initialAbstractionIn({ retentionIn: 2.5, abstractionRatio: 0.2 }) //=> 0.50
 */
export function initialAbstractionIn({ retentionIn, abstractionRatio }: { retentionIn: number; abstractionRatio: AbstractionRatio }): number {
  need('initialAbstractionIn', 'retentionIn', retentionIn, { atLeast: 0 });
  if (abstractionRatio !== 0.2 && abstractionRatio !== 0.05) {
    throw new RangeError(`initialAbstractionIn needs abstractionRatio 0.2 or 0.05, got ${abstractionRatio}`);
  }
  return abstractionRatio * retentionIn;
}
