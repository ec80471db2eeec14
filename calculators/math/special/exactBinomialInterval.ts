import { need } from '../need.ts';
import { betaQuantile } from './betaQuantile.ts';

/**
 * Exact (Clopper-Pearson) interval for a share of which `successes` in `trials` were seen: the lower end is the α/2 quantile of Beta(k, n − k + 1),
 * the upper end the 1 − α/2 quantile of Beta(k + 1, n − k), with k = `successes`, n = `trials`, 1 − α = `confidence`.
 * @param options.successes - Number of cases in question; a whole number, 0 to `trials`
 * @param options.trials - Number of cases looked at; a whole number, at least 1
 * @param options.confidence - Confidence of the two-sided interval, share; above 0, below 1; 0.95 if left out
 * @returns Lower and upper end, shares of 1
 * @throws RangeError if a parameter is outside its range
 * @source clopper-pearson-1934, p. 404
 * @example exactBinomialInterval({ successes: 3, trials: 30 }).upperShare //=> 0.265
 */
export function exactBinomialInterval({
  successes,
  trials,
  confidence = 0.95,
}: {
  readonly successes: number;
  readonly trials: number;
  readonly confidence?: number;
}): { readonly lowerShare: number; readonly upperShare: number } {
  need('exactBinomialInterval', 'trials', trials, { atLeast: 1, atMost: 1e6, whole: true });
  need('exactBinomialInterval', 'successes', successes, { atLeast: 0, atMost: trials, whole: true });
  need('exactBinomialInterval', 'confidence', confidence, { above: 0, below: 1 });
  const beyond = (1 - confidence) / 2;
  return {
    lowerShare: successes === 0 ? 0 : betaQuantile(beyond, successes, trials - successes + 1),
    upperShare: successes === trials ? 1 : betaQuantile(1 - beyond, successes + 1, trials - successes),
  };
}
