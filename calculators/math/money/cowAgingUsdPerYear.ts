import { need } from '../need.ts';

/**
 * Worth that a cow loses in a year, in a straight line to her value as a cull: a = (V − C) / n, with V = `valueNowUsd`, C = `cullValueUsd`, n = `yearsLeft`.
 * @param valueNowUsd - Value as a breeding cow today, dollars; 0 or more
 * @param cullValueUsd - Value as a cull at the end, dollars; 0 to `valueNowUsd`
 * @param yearsLeft - Years that she has left in the herd, years; above 0
 * @returns Loss of worth, dollars a year
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example cowAgingUsdPerYear(1600, 900, 5) //=> 140
 */
export function cowAgingUsdPerYear(valueNowUsd: number, cullValueUsd: number, yearsLeft: number): number {
  need('cowAgingUsdPerYear', 'valueNowUsd', valueNowUsd, { atLeast: 0 });
  need('cowAgingUsdPerYear', 'cullValueUsd', cullValueUsd, { atLeast: 0, atMost: valueNowUsd });
  need('cowAgingUsdPerYear', 'yearsLeft', yearsLeft, { above: 0 });
  return (valueNowUsd - cullValueUsd) / yearsLeft;
}

/**
 * Years that a cow stays in a herd on average: n = 100 / c, with c = `cullPercentPerYear`.
 * @param cullPercentPerYear - Cows that leave the herd in a year, percent; above 0, at most 100
 * @returns Time in the herd, years
 * @throws RangeError if the share is outside its range
 * @source dennis-replacements-2023, productive life
 * @example yearsInHerd(16) //=> 6.25
 */
export function yearsInHerd(cullPercentPerYear: number): number {
  need('yearsInHerd', 'cullPercentPerYear', cullPercentPerYear, { above: 0, atMost: 100 });
  return 100 / cullPercentPerYear;
}
