import { need, needThere } from '../need.ts';

/** Running sums over a record, so that any stretch of days is one subtraction. */
export interface RainByDay {
  /** Day number of the first day of the record. */
  readonly firstDay: number;
  /** Day number of the last. */
  readonly lastDay: number;
  /** Rain up to each day, without it; one place more than there are days. */
  readonly rainBefore: Float64Array;
  /** Days that were read up to each day, without it. */
  readonly daysReadBefore: Int32Array;
}

/**
 * Lays a rain record out by days, with `lines`: each an amount that fell in a number of days up to and with its day. A total over several days is
 * shared evenly among them. A day that no line covers was not read.
 * @param lines - Day number, amount in any one unit, days covered (1 if left out), in order of days, not overlapping; one line or more
 * @returns Running sums of rain and of days read
 * @throws RangeError if there is no line, a day is not whole or out of order, or an amount is below 0
 * @source our own, plain counting
 * @example rainBetween(rainByDay([{ day: 10, amount: 1 }, { day: 13, amount: 3, days: 2 }]), 10, 12) //=> ({ rain: 2.5, daysRead: 2 })
 */
export function rainByDay(lines: readonly { readonly day: number; readonly amount: number; readonly days?: number }[]): RainByDay {
  need('rainByDay', 'lines.length', lines.length, { atLeast: 1 });
  const first = needThere('rainByDay', 'first line', lines[0]);
  const firstDay = first.day - (first.days ?? 1) + 1;
  const lastDay = needThere('rainByDay', 'last line', lines.at(-1)).day;
  need('rainByDay', 'days from first to last', lastDay - firstDay + 1, { atLeast: 1, whole: true });
  const rain = new Float64Array(lastDay - firstDay + 1);
  const isRead = new Uint8Array(rain.length);
  let covered = firstDay - 1;
  for (const { day, amount, days = 1 } of lines) {
    need('rainByDay', 'day', day - days, { atLeast: covered, whole: true });
    need('rainByDay', 'amount', amount, { atLeast: 0 });
    for (let each = day - days + 1; each <= day; each += 1) {
      rain[each - firstDay] = amount / days;
      isRead[each - firstDay] = 1;
    }
    covered = day;
  }
  const [rainBefore, daysReadBefore] = [new Float64Array(rain.length + 1), new Int32Array(rain.length + 1)];
  let [fallen, daysRead] = [0, 0];
  for (const [place, amount] of rain.entries()) rainBefore[place + 1] = fallen += amount;
  for (const [place, read] of isRead.entries()) daysReadBefore[place + 1] = daysRead += read;
  return { firstDay, lastDay, rainBefore, daysReadBefore };
}

/**
 * Rain from one day to another, both with it, as far as it was read, with the record `table`, `firstDay`, `lastDay`. Days outside the record count
 * as not read.
 * @param table - Record as `rainByDay` lays it out
 * @param firstDay - Day number of the first day; a whole number
 * @param lastDay - Day number of the last day; a whole number, at least `firstDay`
 * @returns Rain, unit of the record, and days that were read
 * @throws RangeError if a day is not whole or they stand in the wrong order
 * @source our own, plain counting
 * @example rainBetween(rainByDay([{ day: 10, amount: 1 }, { day: 12, amount: 2 }]), 9, 12) //=> ({ rain: 3, daysRead: 2 })
 */
export function rainBetween(table: RainByDay, firstDay: number, lastDay: number): { readonly rain: number; readonly daysRead: number } {
  need('rainBetween', 'firstDay', firstDay, { whole: true });
  need('rainBetween', 'lastDay', lastDay, { atLeast: firstDay, whole: true });
  const from = Math.max(firstDay, table.firstDay) - table.firstDay;
  const to = Math.min(lastDay, table.lastDay) - table.firstDay + 1;
  if (to <= from) return { rain: 0, daysRead: 0 };
  const between = (before: Float64Array | Int32Array): number =>
    needThere('rainBetween', 'last day', before[to]) - needThere('rainBetween', 'first day', before[from]);
  return {
    // Two running sums of many amounts may differ by the dust of their last digits; a dry spell must be dry.
    rain: Number(Math.max(0, between(table.rainBefore)).toFixed(9)),
    daysRead: between(table.daysReadBefore),
  };
}
