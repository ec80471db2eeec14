import { need, needThere } from '../need.ts';

/** A source of numbers spread evenly over 0 to 1, ends left out. Everything random here takes one as a parameter, so that a seed repeats a run. */
export type RandomSource = () => number;

const firstModulus = 2 ** 32 - 209;
const secondModulus = 2 ** 32 - 22_853;

/**
 * The rest of a division, from 0 up. Exact for all that comes here, below 2⁵³: rounding takes no such quotient up to the next whole number. `%` takes
 * three times as long.
 */
const modulo = (value: number, modulus: number): number => value - Math.floor(value / modulus) * modulus;
const at = (numbers: Float64Array, index: number): number => needThere('seededRandom', index, numbers[index]);
const push = (numbers: Float64Array, newest: number): void => {
  numbers[2] = at(numbers, 1);
  numbers[1] = at(numbers, 0);
  numbers[0] = newest;
};

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
  // The last three of both, newest first. In an array of doubles, because a fraction that a function keeps is otherwise made an object each time.
  const [x, y] = [Float64Array.of(seed, 0, 0), Float64Array.of(seed, 0, 0)];
  return () => {
    const nextX = modulo(1_403_580 * at(x, 1) - 810_728 * at(x, 2), firstModulus);
    const nextY = modulo(527_612 * at(y, 0) - 1_370_589 * at(y, 2), secondModulus);
    push(x, nextX);
    push(y, nextY);
    return (modulo(nextX - nextY, firstModulus) + 1) / (firstModulus + 1);
  };
}
