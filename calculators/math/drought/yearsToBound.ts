import { need } from '../need.ts';

/**
 * Years of record before the worst year seen is worse, with a given confidence, than a one-in-so-many year: the least n with 1 − (1 − p)^n ≥ c,
 * with p = `exceedanceShare`, c = `confidence`. For the one-in-ten need and 95 % that is 29 years; with fewer, no way of drawing from the record
 * can bound it.
 * @param exceedanceShare - Share of years that the need is exceeded; above 0, below 1
 * @param confidence - Confidence wanted, share; above 0, below 1; 0.95 if left out
 * @returns Years of record, a whole number
 * @throws RangeError if a parameter is outside its range
 * @source wilks-1941, distribution-free limits (from memory)
 * @example yearsToBound(0.1) //=> 29
 */
export function yearsToBound(exceedanceShare: number, confidence = 0.95): number {
  need('yearsToBound', 'exceedanceShare', exceedanceShare, { above: 0, below: 1 });
  need('yearsToBound', 'confidence', confidence, { above: 0, below: 1 });
  return Math.ceil(Math.log1p(-confidence) / Math.log1p(-exceedanceShare));
}
