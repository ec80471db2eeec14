import { wholeUnits } from '../hay/wholeUnits.ts';
import { need } from '../need.ts';

interface Rotation {
  readonly restDays: number;
  readonly stayDays: number;
  readonly herds: number;
}

/**
 * Paddocks that give a rest: n = R / s + h, with R = `restDays`, s = `stayDays`, h = `herds`. Not rounded.
 * @param options.restDays - Rest that a paddock needs, days; at least 0
 * @param options.stayDays - Days that a herd stays in a paddock, days; above 0
 * @param options.herds - Herds that graze at the same time, whole; at least 1
 * @returns Paddocks, number
 * @throws RangeError if a value is outside its range
 * @source penn-state-four-steps, step 3
 * @example paddocksNeeded({ restDays: 30, stayDays: 4, herds: 1 }) //=> 8.5
 */
export function paddocksNeeded({ restDays, stayDays, herds }: Rotation): number {
  need('paddocksNeeded', 'restDays', restDays, { atLeast: 0 });
  need('paddocksNeeded', 'stayDays', stayDays, { above: 0 });
  need('paddocksNeeded', 'herds', herds, { atLeast: 1, whole: true });
  return restDays / stayDays + herds;
}

/**
 * Paddocks to build for a rest, rounded up: the least whole n with n >= R / s + h, with R = `restDays`, s = `stayDays`, h = `herds`.
 * @param options.restDays - Rest that a paddock needs, days; at least 0
 * @param options.stayDays - Days that a herd stays in a paddock, days; above 0
 * @param options.herds - Herds that graze at the same time, whole; at least 1
 * @returns Paddocks, whole
 * @throws RangeError if a value is outside its range
 * @source penn-state-four-steps, step 3
 * @example wholePaddocks({ restDays: 30, stayDays: 4, herds: 1 }) //=> 9
 */
export function wholePaddocks({ restDays, stayDays, herds }: Rotation): number {
  return wholeUnits(paddocksNeeded({ restDays, stayDays, herds }), 1);
}
