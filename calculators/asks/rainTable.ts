import type { RecordLine } from '../kit/record/recordLine.ts';
import { type RainByDay, rainByDay } from '../math/drought/rainByDay.ts';

// A record stays the same list while somebody types in the other fields; laying out a hundred years of days at each key would be felt.
const laidOut = new WeakMap<readonly RecordLine[], RainByDay>();
/** A record that was asked for, laid out by days. */
export function rainTableOf(lines: readonly RecordLine[]): RainByDay {
  const table = laidOut.get(lines) ?? rainByDay(lines);
  laidOut.set(lines, table);
  return table;
}
