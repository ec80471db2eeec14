import { need } from '../need.ts';
import { exactBinomialInterval } from '../special/exactBinomialInterval.ts';

/**
 * Ground cover by points with its exact (Clopper-Pearson) interval: p = 100 k/n, with k = `hits`, n = `points`. The interval holds for points that fall
 * independently; points at even steps along plants in rows can stray further.
 * @param options.hits - Points at which plant, litter or stone covered the ground; whole number, 0 to `points`
 * @param options.points - Points looked at; whole number, at least 1
 * @param options.confidence - Confidence of the interval, share; above 0, below 1; 0.95 if left out
 * @returns Cover and the ends of its interval, percent
 * @throws RangeError if a parameter is outside its range
 * @source missouri-g1570, hits in 100 (cover); clopper-pearson-1934, p. 404 (interval)
 * @example groundCover({ hits: 44, points: 100 }).coverPercent //=> 44
 */
export function groundCover({ hits, points, confidence = 0.95 }: { readonly hits: number; readonly points: number; readonly confidence?: number }): {
  readonly coverPercent: number;
  readonly lowPercent: number;
  readonly highPercent: number;
} {
  need('groundCover', 'points', points, { atLeast: 1, atMost: 1e6, whole: true });
  need('groundCover', 'hits', hits, { atLeast: 0, atMost: points, whole: true });
  const { lowerShare, upperShare } = exactBinomialInterval({ successes: hits, trials: points, confidence });
  return { coverPercent: (100 * hits) / points, lowPercent: 100 * lowerShare, highPercent: 100 * upperShare };
}
