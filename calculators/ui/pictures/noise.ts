/**
 * A fixed, scattered number from 0 to 1 for each index: the built page and the browser draw the same blade in the same place, and small changes
 * in the inputs move things instead of shuffling them. Integer hash, so that every engine agrees to the last bit.
 */
export function noise(index: number, salt: number): number {
  let mixed = Math.imul(index + 1, 0x9e3779b1) ^ Math.imul(salt + 1, 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x2c1b3c6d);
  mixed = Math.imul(mixed ^ (mixed >>> 12), 0x297a2d39);
  return ((mixed ^ (mixed >>> 15)) >>> 0) / 0x100000000;
}
/** The same from -1 to 1. */
export const sway = (index: number, salt: number): number => noise(index, salt) * 2 - 1;

/** Even yet without rows, along each of two directions: the additive recurrence of the plastic number. */
export const evenly = (index: number): readonly [number, number] => [(0.5 + index * 0.7548776662) % 1, (0.5 + index * 0.569840291) % 1];

/** One piece of a path for each index, joined. */
export const strokes = (count: number, make: (index: number) => string): string =>
  Array.from({ length: Math.max(0, Math.round(count)) }, (_, index) => make(index)).join('');

export const between = (low: number, value: number, high: number): number => Math.min(high, Math.max(low, value));
