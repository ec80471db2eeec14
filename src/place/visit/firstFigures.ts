import type { Result } from '../model/result.ts';

type Figure = Result['shown'][number];
type Pair = readonly [Figure, Figure];

/** Lines that a result has among others. */
const mostFigures = 4;
const isNumber = ({ text }: Figure): boolean => /\d/.test(text);

/**
 * The figures that a result is told by where not all have room. Of two sides each stands beside that of the other, and first those that differ: the leading
 * one, then numbers.
 */
export function firstFigures({ shown, sides }: Pick<Result, 'shown' | 'sides'>): readonly Figure[] {
  if (!sides) return shown.slice(0, mostFigures);
  const [mine, theirs] = [`${sides[0]}: `, `${sides[1]}: `];
  const pairs = shown.flatMap((one, index): Pair[] => {
    const two = shown.find(({ label }, at) => at > index && label === `${theirs}${one.label.slice(mine.length)}`);
    return two && one.label.startsWith(mine) ? [[one, two]] : [];
  });
  const rank = (pair: Pair): number => (pair[0].text === pair[1].text ? 2 : pair === pairs[0] || pair.every(isNumber) ? 0 : 1);
  if (pairs.length === 0) return shown.slice(0, mostFigures);
  return pairs
    .toSorted((one, other) => rank(one) - rank(other))
    .flat()
    .slice(0, mostFigures);
}
