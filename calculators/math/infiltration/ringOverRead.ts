import { need } from '../need.ts';

/** Shape constants of the steady-flow solution, for the depth of the ring in the soil and for its radius. */
const insertionWeight = 0.316 * Math.PI;
const radiusWeight = 0.184 * Math.PI;

/**
 * How many times too fast a single ring reads, since water also spreads sideways below it: q / K = 1 + (H + λ) / (C1 d + C2 a), with H = `pondedIn`,
 * λ = `capillaryLengthIn`, d = `insertedIn`, a = half of `boreIn`, C1 = 0.316 π, C2 = 0.184 π.
 * @param options.boreIn - Inside diameter of the ring, inches; above 0
 * @param options.insertedIn - Depth of the ring in the soil, inches; above 0
 * @param options.pondedIn - Mean depth of the water in the ring, inches; 0 or more
 * @param options.capillaryLengthIn - Reach of capillary pull, inches; above 0
 * @returns Ring rate over the rate straight down, no unit; above 1
 * @throws RangeError if a parameter is outside its range
 * @source reynolds-elrick-1990, steady flow from a ring (from memory)
 * @example ringOverRead({ boreIn: 6, insertedIn: 3, pondedIn: 0.5, capillaryLengthIn: 3.28 }) //=> 1.80
 */
export function ringOverRead({
  boreIn,
  insertedIn,
  pondedIn,
  capillaryLengthIn,
}: {
  boreIn: number;
  insertedIn: number;
  pondedIn: number;
  capillaryLengthIn: number;
}): number {
  need('ringOverRead', 'boreIn', boreIn, { above: 0 });
  need('ringOverRead', 'insertedIn', insertedIn, { above: 0 });
  need('ringOverRead', 'pondedIn', pondedIn, { atLeast: 0 });
  need('ringOverRead', 'capillaryLengthIn', capillaryLengthIn, { above: 0 });
  return 1 + (pondedIn + capillaryLengthIn) / (insertionWeight * insertedIn + (radiusWeight * boreIn) / 2);
}
