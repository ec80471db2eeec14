import { need } from '../need.ts';
import type { RandomSource } from './seededRandom.ts';

/**
 * Draws years of a record with replacement, singly or in unbroken blocks (moving-block bootstrap): whole years keep their seasons, blocks keep dry
 * years together. No draw is ever drier than the driest year seen, and no number of draws makes up for a short record.
 * @param options.years - Years in the record; a whole number, at least 1
 * @param options.blockYears - Years a block; a whole number, 1 (singly) to `years`
 * @param options.count - Years wanted; a whole number, at least 1; as many as the record has if left out
 * @param options.random - Random source
 * @returns Positions of the drawn years in the record, from 0
 * @throws RangeError if a parameter is outside its range
 * @source kunsch-1989, moving blocks
 * @example resampledYears({ years: 10, blockYears: 3, count: 4, random: () => 0.5 }) //=> [4, 5, 6, 4]
 */
export function resampledYears({
  years,
  blockYears,
  count = years,
  random,
}: {
  readonly years: number;
  readonly blockYears: number;
  readonly count?: number;
  readonly random: RandomSource;
}): number[] {
  need('resampledYears', 'years', years, { atLeast: 1, whole: true });
  need('resampledYears', 'blockYears', blockYears, { atLeast: 1, atMost: years, whole: true });
  need('resampledYears', 'count', count, { atLeast: 1, whole: true });
  const drawn: number[] = [];
  while (drawn.length < count) {
    const start = Math.floor(random() * (years - blockYears + 1));
    for (let year = start; year < start + blockYears && drawn.length < count; year += 1) drawn.push(year);
  }
  return drawn;
}
