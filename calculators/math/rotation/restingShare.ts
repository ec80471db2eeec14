import { need } from '../need.ts';

/**
 * Share of the paddocks at rest on any day: (n - h) / n, with n = `paddocks`, h = `herds`.
 * @param options.paddocks - Paddocks in the rotation, whole; at least `herds`
 * @param options.herds - Herds that graze at the same time; a whole number, at least 1
 * @returns Share at rest, no unit, 0 to 1
 * @throws RangeError if a value is outside its range
 * @source shelton-rest, example of 4 paddocks
 * @example restingShare({ paddocks: 4, herds: 1 }) //=> 0.75
 */
export function restingShare({ paddocks, herds }: { readonly paddocks: number; readonly herds: number }): number {
  need('restingShare', 'herds', herds, { atLeast: 1, whole: true });
  need('restingShare', 'paddocks', paddocks, { atLeast: herds, whole: true });
  return (paddocks - herds) / paddocks;
}
