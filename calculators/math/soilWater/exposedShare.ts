import { need } from '../need.ts';

/** The equations for the surface layer divide by it, so it never goes to nothing. */
const leastExposed = 0.01;

/**
 * Share of the ground that rain wets and sun reaches: few = 1 − f − l, 0.01 at least, with f = `coverShare` (living plants) and l = `litterShare`
 * (dead stems and leaves on the ground). The handbook leaves out litter here and shrinks the evaporable water instead (`evaporableWaterMm` with
 * `mulchShare`): use one of the two, never both.
 * @param coverShare - Share of the ground under living plants; 0 to 1
 * @param litterShare - Share of the ground under litter and not under plants; 0 to 1 − `coverShare`
 * @returns Exposed share of the ground, 0.01 to 1
 * @throws RangeError if a share is outside its range
 * @source allen-1998, eq. 75; litter as cover is our own
 * @example exposedShare(0.4, 0.3) //=> 0.3
 */
export function exposedShare(coverShare: number, litterShare: number): number {
  need('exposedShare', 'coverShare', coverShare, { atLeast: 0, atMost: 1 });
  need('exposedShare', 'litterShare', litterShare, { atLeast: 0, atMost: 1 - coverShare + 1e-9 });
  return Math.max(leastExposed, 1 - coverShare - litterShare);
}
