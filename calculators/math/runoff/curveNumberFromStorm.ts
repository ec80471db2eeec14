import { need } from '../need.ts';
import type { AbstractionRatio } from './initialAbstractionIn.ts';

/**
 * Tabled curve number that one measured storm shows, the reverse of `stormRunoffIn`: for the ratio 0.2, S = 5 (P + 2 Q − √(4 Q² + 5 P Q)) and
 * CN = 1000 / (S + 10), with P = `rainIn`, Q = `runoffIn`. For any ratio r, S = (2 r P + (1 − r) Q − √((1 − r)² Q² + 4 r P Q)) / (2 r²);
 * for 0.05 the result is put back on the tabled scale.
 * @param options.rainIn - Rain of the storm, inches; above 0
 * @param options.runoffIn - Runoff of the same storm over the whole area, inches; above 0, at most `rainIn`
 * @param options.abstractionRatio - Share of the retention used up first, no unit; 0.2 or 0.05
 * @returns Curve number, no unit
 * @throws RangeError if the rain is not above 0 or the runoff is outside its range
 * @source ponce-hawkins-1996, S from P and Q (from memory; it inverts eq. 2-3 of tr55-1986 exactly)
 * @example curveNumberFromStorm({ rainIn: 8, runoffIn: 5.625, abstractionRatio: 0.2 }) //=> 80.00
 */
export function curveNumberFromStorm({
  rainIn,
  runoffIn,
  abstractionRatio,
}: {
  rainIn: number;
  runoffIn: number;
  abstractionRatio: AbstractionRatio;
}): number {
  need('curveNumberFromStorm', 'rainIn', rainIn, { above: 0 });
  need('curveNumberFromStorm', 'runoffIn', runoffIn, { above: 0, atMost: rainIn });
  const kept = 1 - abstractionRatio;
  const root = Math.sqrt(kept ** 2 * runoffIn ** 2 + 4 * abstractionRatio * rainIn * runoffIn);
  // The textbook form subtracts two nearly equal numbers where almost all rain runs off; this one is the same solution without the loss.
  const retentionIn = (2 * rainIn * (rainIn - runoffIn)) / (2 * abstractionRatio * rainIn + kept * runoffIn + root);
  const tabledIn = abstractionRatio === 0.05 ? (retentionIn / 1.33) ** (1 / 1.15) : retentionIn;
  return 1000 / (tabledIn + 10);
}
