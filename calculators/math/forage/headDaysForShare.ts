import { need } from '../need.ts';

/**
 * Head-days that would have taken the wanted share: D = d w / u, with d = `headDays` that were grazed, w = `wantedPercent`, u = `takenPercent`.
 * Rough, because stock take the best first, so that each further percent costs them more.
 * @param options.headDays - Head-days that were grazed; at least 0
 * @param options.wantedPercent - Share of the weight that should be taken, percent; 0 to 100
 * @param options.takenPercent - Share that was taken by them, percent; above 0, at most 100
 * @returns Head-days in all
 * @throws RangeError if a value is outside its range
 * @source schmutz-1963, abstract (from use so far and proper use to what remains)
 * @example headDaysForShare({ headDays: 1200, wantedPercent: 25, takenPercent: 50 }) //=> 600
 */
export function headDaysForShare({
  headDays,
  wantedPercent,
  takenPercent,
}: {
  readonly headDays: number;
  readonly wantedPercent: number;
  readonly takenPercent: number;
}): number {
  need('headDaysForShare', 'headDays', headDays, { atLeast: 0 });
  need('headDaysForShare', 'wantedPercent', wantedPercent, { atLeast: 0, atMost: 100 });
  need('headDaysForShare', 'takenPercent', takenPercent, { above: 0, atMost: 100 });
  return (headDays * wantedPercent) / takenPercent;
}
