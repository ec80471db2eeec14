import { need } from '../need.ts';

/**
 * What becomes of a year's growth: gone u, left 1 - u, eaten u e, lost u (1 - e), with u = `goneShare`, e = `eatenOfGone`. Half gone is not half
 * eaten.
 * @param options.goneShare - Share of the whole growth that is gone when grazing ends, no unit; 0 to 1
 * @param options.eatenOfGone - Share of what is gone that went into animals, no unit; 0 to 1 (about half on range)
 * @returns Shares of the whole growth: left, eaten, lost
 * @throws RangeError if a value is outside its range
 * @source white-b5036, take half, leave half
 * @example growthSplit({ goneShare: 0.5, eatenOfGone: 0.5 }) //=> { leftShare: 0.5, eatenShare: 0.25, lostShare: 0.25 }
 */
export function growthSplit({ goneShare, eatenOfGone }: { readonly goneShare: number; readonly eatenOfGone: number }): {
  readonly leftShare: number;
  readonly eatenShare: number;
  readonly lostShare: number;
} {
  need('growthSplit', 'goneShare', goneShare, { atLeast: 0, atMost: 1 });
  need('growthSplit', 'eatenOfGone', eatenOfGone, { atLeast: 0, atMost: 1 });
  return { leftShare: 1 - goneShare, eatenShare: goneShare * eatenOfGone, lostShare: goneShare * (1 - eatenOfGone) };
}
