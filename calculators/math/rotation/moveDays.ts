import { need } from '../need.ts';

export interface Move {
  /** Herd, from 1: herd 1 goes ahead, the others follow it. */
  readonly herd: number;
  /** Paddock, from 1. */
  readonly paddock: number;
  readonly inDay: number;
  /** Day on which the herd goes on; the next one may come in on it. */
  readonly outDay: number;
  /** Day to go and look whether the paddock is ready. */
  readonly lookDay: number;
}

/**
 * Days of the moves through a rotation, in order of day and herd: in = d0 + k s, out = in + s, look = in - l, with d0 = `startDay`, k = the count
 * of moves before, s = `stayDays`, l = `leadDays`. Herds follow one another, so every paddock still rests (n - h) s days.
 * @param options.startDay - Day of the first move, number of the day in any calendar, whole; before or after day 0
 * @param options.paddocks - Paddocks, grazed in turn, whole; at least `herds`
 * @param options.stayDays - Days that a herd stays, whole days; at least 1
 * @param options.herds - Herds that graze at the same time, whole; at least 1
 * @param options.leadDays - Days before a move on which to look, whole days; at least 0
 * @param options.moves - Moves of each herd to list, whole; at least 1
 * @returns A row for each stay: herd, paddock, day in, day out, day to look
 * @throws RangeError if a value is outside its range
 * @source our own, calendar arithmetic
 * @example moveDays({ startDay: 100, paddocks: 3, stayDays: 4, herds: 1, leadDays: 3, moves: 2 })[1] //=> { herd: 1, paddock: 2, inDay: 104, outDay: 108, lookDay: 101 }
 */
export function moveDays({
  startDay,
  paddocks,
  stayDays,
  herds = 1,
  leadDays = 3,
  moves = paddocks,
}: {
  readonly startDay: number;
  readonly paddocks: number;
  readonly stayDays: number;
  readonly herds?: number;
  readonly leadDays?: number;
  readonly moves?: number;
}): Move[] {
  need('moveDays', 'startDay', startDay, { whole: true });
  need('moveDays', 'herds', herds, { atLeast: 1, whole: true });
  need('moveDays', 'paddocks', paddocks, { atLeast: herds, whole: true });
  need('moveDays', 'stayDays', stayDays, { atLeast: 1, whole: true });
  need('moveDays', 'leadDays', leadDays, { atLeast: 0, whole: true });
  need('moveDays', 'moves', moves, { atLeast: 1, whole: true });
  return Array.from({ length: moves }, (_, move) =>
    Array.from({ length: herds }, (_unused, behind) => {
      const inDay = startDay + move * stayDays;
      return { herd: behind + 1, paddock: ((herds - 1 - behind + move) % paddocks) + 1, inDay, outDay: inDay + stayDays, lookDay: inDay - leadDays };
    }),
  ).flat();
}
