import { need } from '../need.ts';

/** A source of numbers spread evenly over 0 to 1, ends left out. Everything random here takes one as a parameter, so that a seed repeats a run. */
export type RandomSource = () => number;

const firstModulus = 2 ** 32 - 209;
const secondModulus = 2 ** 32 - 22_853;

/**
 * Seeded random source, the combined recursive generator MRG32k3a: x(n) = (1403580 x(n−2) − 810728 x(n−3)) mod (2³² − 209), y(n) = (527612 y(n−1) −
 * 1370589 y(n−3)) mod (2³² − 22853), u = ((x − y) mod (2³² − 209) + 1) / (2³² − 208); both start from (`seed`, 0, 0), newest first. Its period is
 * about 2¹⁹¹, and every step is exact in doubles, so that all machines draw the same numbers.
 * @param seed - Seed; a whole number, 1 to 4294944442
 * @returns Function that gives the next number each time, above 0 and below 1
 * @throws RangeError if `seed` is not a whole number in its range
 * @source lecuyer-1999, MRG32k3a; seeding as in rosetta-mrg32k3a
 * @example seededRandom(1234567)() * (2 ** 32 - 208) //=> 1459213977
 */
export function seededRandom(seed: number): RandomSource {
  need('seededRandom', 'seed', seed, { atLeast: 1, below: secondModulus, whole: true });
  let [x1, x2, x3] = [seed, 0, 0];
  let [y1, y2, y3] = [seed, 0, 0];
  return () => {
    const x = (((1_403_580 * x2 - 810_728 * x3) % firstModulus) + firstModulus) % firstModulus;
    const y = (((527_612 * y1 - 1_370_589 * y3) % secondModulus) + secondModulus) % secondModulus;
    [x1, x2, x3] = [x, x1, x2];
    [y1, y2, y3] = [y, y1, y2];
    return (((x - y + firstModulus) % firstModulus) + 1) / (firstModulus + 1);
  };
}
