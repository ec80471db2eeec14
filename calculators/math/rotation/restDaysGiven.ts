import { need } from '../need.ts';

/**
 * Rest that a number of paddocks gives: R = (n - h) s, with n = `paddocks`, s = `stayDays`, h = `herds`.
 * @param options.paddocks - Paddocks in the rotation, whole; at least `herds`
 * @param options.stayDays - Days that a herd stays in a paddock, days; above 0
 * @param options.herds - Herds that graze at the same time, whole; at least 1
 * @returns Rest between grazings, days
 * @throws RangeError if a value is outside its range
 * @source penn-state-four-steps, step 3
 * @example restDaysGiven({ paddocks: 12, stayDays: 3, herds: 1 }) //=> 33
 */
export function restDaysGiven({
  paddocks,
  stayDays,
  herds,
}: {
  readonly paddocks: number;
  readonly stayDays: number;
  readonly herds: number;
}): number {
  need('restDaysGiven', 'herds', herds, { atLeast: 1, whole: true });
  need('restDaysGiven', 'paddocks', paddocks, { atLeast: herds, whole: true });
  need('restDaysGiven', 'stayDays', stayDays, { above: 0 });
  return (paddocks - herds) * stayDays;
}
