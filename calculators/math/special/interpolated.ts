import { need, needThere } from '../need.ts';

/**
 * Value of a table between its rows, by straight lines: y = y₁ + (y₂ − y₁)(x − x₁)/(x₂ − x₁), with x = `x`, the rows' x in `at`, their y in `values`.
 * Below the first row and above the last it stays at their values, so callers whose table ends sooner than their question refuse first.
 * @param x - Where to read; finite
 * @param at - The rows' x, rising, at least one
 * @param values - The rows' y, one for each of `at`
 * @returns Value at `x`, in the unit of `values`
 * @throws RangeError if `x` is not finite, if the rows don't rise or if the two lists differ in length
 * @source common practice
 * @example interpolated(50, [40, 60], [0.1, 0.042]) //=> 0.071
 */
export function interpolated(x: number, at: readonly number[], values: readonly number[]): number {
  need('interpolated', 'x', x);
  need('interpolated', 'rows', at.length, { atLeast: 1 });
  if (at.length !== values.length) throw new RangeError(`interpolated needs as many values as rows, got ${values.length} for ${at.length}`);
  let lowerX = needThere('interpolated', 'first row', at[0]);
  let lowerY = needThere('interpolated', 'first value', values[0]);
  if (x <= lowerX) return lowerY;
  for (const [index, upperX] of at.entries()) {
    const upperY = needThere('interpolated', `value ${index + 1}`, values[index]);
    if (index > 0) need('interpolated', `row ${index + 1}`, upperX, { above: lowerX });
    if (x <= upperX) return lowerY + ((upperY - lowerY) * (x - lowerX)) / (upperX - lowerX);
    [lowerX, lowerY] = [upperX, upperY];
  }
  return lowerY;
}
