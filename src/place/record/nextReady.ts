import { actualRestDays } from '../../../calculators/math/rotation/actualRestDays.ts';
import { readyDay } from '../../../calculators/math/rotation/readyDay.ts';
import { restByGrowth } from '../../../calculators/tables/restByGrowth.ts';
import type { Place } from '../model/place.ts';
import type { Row } from '../model/row.ts';
import { dayIn, goneDayOf, inDayOf, rowsOf } from './days.ts';
import { type Ground, groundsOf, hayGroundsOf, isPartly } from './grounds.ts';
import { restOverDay } from './growingRest.ts';

/** How it is known when a ground is ready. */
export type ReadyFrom =
  /** A height at or above the one to start at. */
  | 'height'
  /** Two heights since they went out. */
  | 'heights'
  /** Two heights, and it did not grow. */
  | 'no-growth'
  /** So many days from when they went out. */
  | 'rest'
  /** The same, without the days of months in which nothing grows. */
  | 'rest-in-growth'
  /** It is cut for hay: no rest says when stock may go there. */
  | 'hay'
  /** The record has no stock on it. */
  | 'never';
export interface Ready {
  readonly ground: Ground;
  readonly from: ReadyFrom;
  /** None before it rains. Never before today. */
  readonly readyDay?: number;
  /** When to go and look. */
  readonly lookDay?: number;
  /** Days since stock went out. */
  readonly restedDays?: number;
}

/** Days before a move on which to go and look. */
const leadDays = 3;
/** Two readings nearer than this tell the error of the ruler more than growth (as the form about rests has it). */
const leastApartDays = 3;
const slow: readonly number[] = restByGrowth.filter(({ growth }) => growth === 'slow').flatMap(({ restDays }) => restDays);
/** The longest rest that guides give for slow growth: it stands in where a place does not tell the rest it wants. */
export const slowRestDays = Math.max(...slow);
export const restWanted = ({ grazing }: Place): number => grazing?.restDays ?? slowRestDays;

/** Grounds on which no stock stand, the one that is ready first before the others; of those ready on one day the longest rested. Those that are cut stand last. */
export function nextReady(place: Place, rows: readonly Row[], todayDay: number): readonly Ready[] {
  const moves = rowsOf(rows, 'move');
  const there = moves.filter((move) => goneDayOf(move, todayDay) === undefined);
  const heights = rowsOf(rows, 'height');
  const isFree = (ground: Ground): boolean => !there.some(({ paddockId }) => isPartly(paddockId, ground));
  const found = groundsOf(place)
    .filter(isFree)
    .map((ground): Ready => {
      // Where the record has them out before they came in, the later of both days: they were there then.
      const outs = moves.flatMap((move) =>
        isPartly(move.paddockId, ground) && inDayOf(move) <= todayDay ? [Math.max(inDayOf(move), goneDayOf(move, todayDay) ?? todayDay)] : [],
      );
      const outDay = outs.length === 0 ? undefined : Math.max(...outs);
      const read = heights
        .filter(({ paddockId, day }) => paddockId === ground.id && dayIn(day) <= todayDay && (outDay === undefined || dayIn(day) >= outDay))
        .map(({ day, heightIn }) => ({ day: dayIn(day), heightIn }));
      const rested = outDay === undefined ? {} : { restedDays: actualRestDays({ outDay, nextInDay: todayDay }) };
      const known = byHeights(ground, read);
      if (known !== undefined) return { ground, ...rested, ...withLook(known, todayDay) };
      if (outDay === undefined) return { ground, from: 'never', readyDay: todayDay, lookDay: todayDay };
      return { ground, ...rested, ...withLook(byRest(outDay, place), todayDay) };
    });
  const sortDay = ({ readyDay: day }: Ready): number => day ?? Infinity;
  const restOf = ({ restedDays }: Ready): number => restedDays ?? Infinity;
  // Both may be without an end: those keep the order of the place.
  const longestRested = (one: Ready, other: Ready): number => (restOf(one) === restOf(other) ? 0 : restOf(other) - restOf(one));
  const sorted = found.toSorted((one, other) => (sortDay(one) === sortDay(other) ? longestRested(one, other) : sortDay(one) - sortDay(other)));
  const cut = hayGroundsOf(place).filter(isFree);
  return [...sorted, ...cut.map((ground): Ready => ({ ground, from: 'hay' }))];
}

type Known = Pick<Ready, 'from' | 'readyDay'>;
function byRest(outDay: number, place: Place): Known {
  const wanted = restWanted(place);
  const day = restOverDay(outDay, wanted, place);
  return { from: day === outDay + wanted ? 'rest' : 'rest-in-growth', readyDay: day };
}
function byHeights({ pasture }: Ground, read: readonly { readonly day: number; readonly heightIn: number }[]): Known | undefined {
  const { startHeightIn } = pasture;
  const last = read.at(-1);
  if (last === undefined || startHeightIn === undefined || startHeightIn <= 0) return undefined;
  if (last.heightIn >= startHeightIn) return { from: 'height', readyDay: last.day };
  const first = read.findLast(({ day }) => day <= last.day - leastApartDays);
  if (first === undefined) return undefined;
  const day = readyDay({ first, last, startHeightIn });
  return day === undefined ? { from: 'no-growth' } : { from: 'heights', readyDay: day };
}
function withLook(known: Known, todayDay: number): Known & Pick<Ready, 'lookDay'> {
  if (known.readyDay === undefined) return known;
  const day = Math.max(todayDay, known.readyDay);
  return { ...known, readyDay: day, lookDay: Math.max(todayDay, day - leadDays) };
}
