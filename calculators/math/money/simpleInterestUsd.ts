import { need } from '../need.ts';

/**
 * Simple interest on money over part of a year: I = P r t / 36,500, with P = `principalUsd`, r = `ratePercentPerYear`, t = `days`.
 * @param principalUsd - Money lent, owed or freed, dollars; 0 or more
 * @param ratePercentPerYear - Interest rate, percent a year; 0 to 100
 * @param days - Time, days; 0 or more
 * @returns Interest, dollars
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example simpleInterestUsd(1100, 5, 270) //=> 40.68
 */
export function simpleInterestUsd(principalUsd: number, ratePercentPerYear: number, days: number): number {
  need('simpleInterestUsd', 'principalUsd', principalUsd, { atLeast: 0 });
  need('simpleInterestUsd', 'ratePercentPerYear', ratePercentPerYear, { atLeast: 0, atMost: 100 });
  need('simpleInterestUsd', 'days', days, { atLeast: 0 });
  return (principalUsd * ratePercentPerYear * days) / 36_500;
}
