import { need } from '../need.ts';

/** A quotient this close above a whole number is float noise, not a further bale. */
const noise = 1e-9;

/**
 * Whole bales, loads or paddocks that hold an amount: n = ceil(a / s), with a = `amount`, s = `size`; a quotient that is whole but for float noise
 * is not rounded up.
 * @param amount - What is needed, any unit; at least 0
 * @param size - What one unit holds, the same unit; above 0
 * @returns Number of units, whole
 * @throws RangeError if a value is outside its range
 * @source our own, rounding up
 * @example wholeUnits(10100, 1000) //=> 11
 */
export function wholeUnits(amount: number, size: number): number {
  need('wholeUnits', 'amount', amount, { atLeast: 0 });
  need('wholeUnits', 'size', size, { above: 0 });
  const units = amount / size;
  return Math.ceil(units - noise * Math.max(1, units));
}
