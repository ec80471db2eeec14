/**
 * Sum of one number of each line.
 * @param list - Lines
 * @param of - The number of a line
 * @returns Sum, in the numbers' own unit; 0 of no lines
 * @source our own
 * @example sumOf([{ head: 2 }, { head: 3 }], ({ head }) => head) //=> 5
 */
export function sumOf<T>(list: readonly T[], of: (each: T) => number): number {
  return list.reduce((sum, each) => sum + of(each), 0);
}
