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

const shortest = 4;
const longFrom = 8;

/** The known word that somebody may have meant. A short word allows one slip, a long one two; the first letter is seldom wrong. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  if (word.length < shortest || /\d/.test(word)) return undefined;
  const most = word.length < longFrom ? 1 : 2;
  return known
    .filter((each) => Math.abs(each.length - word.length) <= most && each[0] === word[0])
    .map((each) => ({ each, apart: lettersApart(word, each) }))
    .filter(({ apart }) => apart <= most)
    .sort((one, other) => one.apart - other.apart)[0]?.each;
}

const mostSuggested = 5;

/** Known words that look like those that nothing was found for, to offer: further off than what is taken without asking. */
export const nearWords = (words: readonly string[], known: readonly string[]): readonly string[] =>
  words
    .flatMap((word) => known.map((each) => ({ each, apart: lettersApart(word, each), most: word.length / 2 })))
    .filter(({ each, apart, most }) => apart <= most && !/\d/.test(each))
    .sort((one, other) => one.apart - other.apart)
    .slice(0, mostSuggested)
    .map(({ each }) => each);
