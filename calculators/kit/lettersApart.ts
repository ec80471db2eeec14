/** Letters to change, add, drop or swap with a neighbor to make one word into the other. */
export function lettersApart(one: string, other: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let row = 1; row <= one.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const isSame = one[row - 1] === other[column - 1];
      const isSwap = row > 1 && column > 1 && one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      current.push(
        Math.min(
          (last[column] ?? 0) + 1,
          (current[column - 1] ?? 0) + 1,
          (last[column - 1] ?? 0) + (isSame ? 0 : 1),
          isSwap ? (beforeLast[column - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    beforeLast = last;
    last = current;
  }
  return last[other.length] ?? 0;
}
