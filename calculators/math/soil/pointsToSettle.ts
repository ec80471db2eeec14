import { need } from '../need.ts';

/** Of the two-sided 95 % interval, as sample-size tables round it. */
const z = 1.96;

/**
 * Points in all after which a count of the same share would stand clear of a limit, 95 % sure, by the sample size for one share against a known one with
 * continuity correction: n = ((z s + sqrt(z² s² + 2 d))/(2 d))², with d = |p - L|/100, s = sqrt(L (100 - L))/100, p = `sharePercent`, L = `limitPercent`,
 * z = 1.96. The exact interval clears the limit at about the same n.
 * @param options.sharePercent - Share seen so far, percent; 0 to 100, not at the limit itself
 * @param options.limitPercent - Limit that the share should stand clear of, percent; above 0, below 100
 * @returns Points in all, not rounded
 * @throws RangeError if a parameter is outside its range
 * @source fleiss-2003, sample size for one proportion (from memory)
 * @example pointsToSettle({ sharePercent: 40, limitPercent: 50 }) //=> 106
 */
export function pointsToSettle({ sharePercent, limitPercent }: { readonly sharePercent: number; readonly limitPercent: number }): number {
  need('pointsToSettle', 'sharePercent', sharePercent, { atLeast: 0, atMost: 100 });
  need('pointsToSettle', 'limitPercent', limitPercent, { above: 0, below: 100 });
  const awayShare = Math.abs(sharePercent - limitPercent) / 100;
  need('pointsToSettle', 'distance of sharePercent from limitPercent', awayShare, { above: 0 });
  const scatter = z * Math.sqrt((limitPercent / 100) * (1 - limitPercent / 100));
  return ((scatter + Math.sqrt(scatter ** 2 + 2 * awayShare)) / (2 * awayShare)) ** 2;
}
