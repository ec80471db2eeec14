import { actualRestDays } from '../../../calculators/math/rotation/actualRestDays.ts';
import { grazedDays } from '../../../calculators/math/rotation/grazedDays.ts';
import { stockDaysPerAc } from '../../../calculators/math/rotation/stockDaysPerAc.ts';
import { firstOfMonth } from '../../../calculators/units/days.ts';
import type { Place } from '../model/place.ts';
import type { HayRow, MoveRow, Row, StockLine } from '../model/row.ts';
import { dayIn, goneDayOf, inDayOf, rainDays, rowsOf } from './days.ts';
import { type Ground, groundsById, isPartly } from './grounds.ts';
import { dryLb } from './hayFed.ts';
import { headOf, type SplitOff, splitsOf } from './splits.ts';

/** One stay of a herd on one ground, and what is worked out of it. What the record does not tell is left out. */
export interface Stay {
  readonly move: MoveRow;
  readonly ground?: Ground;
  readonly name: string;
  readonly inDay: number;
  /** As it was told; today where they are there still, as they are until the day that was told has come. */
  readonly outDay: number;
  readonly isOpen: boolean;
  /** They went out before they came in: nothing is worked out of it. */
  readonly isImpossible: boolean;
  /** Days, hay and rain are those of one year alone: it began before that year, or went on behind it. */
  readonly isCut: boolean;
  readonly days: number;
  /** Rest that the ground had before they came. */
  readonly restDays?: number;
  /** What all who came eat in a day, lb dry. */
  readonly eatenLbPerDay?: number;
  /** Who went on elsewhere while the others stayed: from that day on the sums have them there. */
  readonly splitOff: readonly SplitOff[];
  readonly hayLb: number;
  /** Hay was fed of which nobody told what a bale weighs: it is not taken off. */
  readonly isHayUnweighed: boolean;
  /** By grass alone, and with the hay in it. */
  readonly stockDaysPerAc?: number;
  readonly withHayPerAc?: number;
  readonly lbPerAc?: number;
  readonly rainIn?: number;
  /** Of the days of that rain, those of which nobody read any. */
  readonly rainUnreadDays: number;
}

/** All of a line's head together, or nothing where nobody knows what one eats. */
export function eatenLbPerDay(stock: readonly StockLine[]): number | undefined {
  if (stock.length === 0) return undefined;
  let sum = 0;
  for (const { countHead, lbPerDay } of stock) {
    if (lbPerDay === undefined) return undefined;
    sum += countHead * lbPerDay;
  }
  return sum;
}
/** What those that were split off would have eaten until a day, had they stayed, lb dry: each as the mean of its kind in the line. */
function notEatenLb(
  { stock }: MoveRow,
  splitOff: readonly SplitOff[],
  { inDay, outDay }: { readonly inDay: number; readonly outDay: number },
): number {
  return splitOff.reduce((sum, { kind, countHead, fromDay }) => {
    const alike = stock.filter((line) => line.kind === kind);
    return sum + ((eatenLbPerDay(alike) ?? 0) / headOf(alike, kind)) * countHead * Math.max(0, outDay - Math.max(fromDay, inDay));
  }, 0);
}
/** The stay that hay of a day belongs to: the one that began last, of those that were there. */
function stayOf(moves: readonly MoveRow[], { paddockId, day }: HayRow, todayDay: number): MoveRow | undefined {
  const fedDay = dayIn(day);
  return moves.findLast((move) => move.paddockId === paddockId && inDayOf(move) <= fedDay && fedDay <= (goneDayOf(move, todayDay) ?? todayDay));
}

/** Hay fed where no stock stood that day in the record: no sum can hold it. */
export function hayOutside(rows: readonly Row[], todayDay: number): readonly HayRow[] {
  const moves = rowsOf(rows, 'move');
  return rowsOf(rows, 'hay').filter((hay) => stayOf(moves, hay, todayDay) === undefined);
}

export interface Counting {
  readonly todayDay: number;
  /** What one of the kind eats that all is counted in, lb a day. */
  readonly yardstickLbPerDay?: number;
  /** Only stays that had days in it, each with what fell in it: one over New Year is shared by its days. */
  readonly year?: number;
}

/** Rain from one day to another, nothing where no reading covers any of them, and on how many nobody read. */
function rainBetween(rain: ReturnType<typeof rainDays>, from: number, to: number): Pick<Stay, 'rainIn' | 'rainUnreadDays'> {
  let sum: number | undefined;
  let rainUnreadDays = 0;
  for (let day = from; day <= to; day += 1) {
    const amountIn = rain.get(day);
    if (amountIn === undefined) rainUnreadDays += 1;
    else sum = (sum ?? 0) + amountIn;
  }
  return { ...(sum === undefined ? {} : { rainIn: sum }), rainUnreadDays };
}

/** Every stay of the record, in the order in which they began. */
export function staysOf(place: Place, rows: readonly Row[], { todayDay, yardstickLbPerDay, year }: Counting): readonly Stay[] {
  const [from, until] = year === undefined ? [-Infinity, Infinity] : [firstOfMonth(0, year), firstOfMonth(0, year + 1)];
  const isOfIt = (day: number): boolean => from <= day && day < until;
  const grounds = groundsById(place);
  const moves = rowsOf(rows, 'move');
  const rain = rainDays(rows);
  const hayOf = new Map<MoveRow, HayRow[]>();
  for (const hay of rowsOf(rows, 'hay')) {
    const move = stayOf(moves, hay, todayDay);
    if (move !== undefined) hayOf.set(move, [...(hayOf.get(move) ?? []), hay]);
  }
  const splits = splitsOf(place, moves, todayDay);
  const lastOut = new Map<string, number>();
  return moves.flatMap((move): readonly Stay[] => {
    const inDay = inDayOf(move);
    const told = goneDayOf(move, todayDay);
    const outDay = told ?? Math.max(inDay, todayDay);
    const isImpossible = outDay < inDay;
    const ground = grounds.get(move.paddockId);
    const here = [...lastOut].filter(([id]) => (ground === undefined ? id === move.paddockId : isPartly(id, ground)));
    const before = isImpossible || here.length === 0 ? undefined : Math.max(...here.map(([, day]) => day));
    // Nobody knows when the rest after it began.
    if (isImpossible) for (const [id] of here) lastOut.delete(id);
    else lastOut.set(move.paddockId, Math.max(outDay, lastOut.get(move.paddockId) ?? outDay));
    const part = { inDay: Math.max(inDay, from), outDay: Math.min(outDay, until) };
    if (outDay > inDay ? part.outDay <= part.inDay : !isOfIt(inDay)) return [];
    const days = isImpossible ? 0 : grazedDays(part);
    // Hay of the day on which they went was eaten by then.
    const fed = (hayOf.get(move) ?? []).filter(({ day }) => isOfIt(Math.min(dayIn(day), Math.max(inDay, outDay - 1))));
    const weights = fed.map(dryLb);
    const hayLb = weights.reduce<number>((sum, each) => (each === undefined ? sum : sum + each), 0);
    const eaten = eatenLbPerDay(move.stock);
    const areaAc = ground?.areaAc;
    const splitOff = splits.get(move) ?? [];
    const isCounted =
      !isImpossible && eaten !== undefined && areaAc !== undefined && areaAc > 0 && yardstickLbPerDay !== undefined && yardstickLbPerDay > 0;
    const shared = isCounted ? { eatenLbPerDay: eaten - notEatenLb(move, splitOff, part) / days, days, areaAc, yardstickLbPerDay } : undefined;
    const net = shared && stockDaysPerAc({ ...shared, hayFedLb: hayLb });
    return [
      {
        move,
        ...(ground === undefined ? {} : { ground }),
        name: ground?.name ?? move.paddockName ?? 'A paddock that was taken away',
        inDay,
        outDay,
        isOpen: told === undefined,
        isImpossible,
        isCut: part.inDay !== inDay || part.outDay !== outDay,
        days,
        ...(before === undefined || before > inDay || inDay < from ? {} : { restDays: actualRestDays({ outDay: before, nextInDay: inDay }) }),
        ...(eaten === undefined ? {} : { eatenLbPerDay: eaten }),
        splitOff,
        hayLb,
        isHayUnweighed: weights.includes(undefined),
        ...(shared === undefined || net === undefined
          ? {}
          : { stockDaysPerAc: net, withHayPerAc: stockDaysPerAc(shared), lbPerAc: net * shared.yardstickLbPerDay }),
        // From the day after they came until they went, of the year.
        ...rainBetween(rain, Math.max(inDay + 1, from), Math.min(outDay, until - 1)),
      },
    ];
  });
}

/** Whether the stock of a later stay is off the one that went on: then none of it counts twice. */
const isPart = ({ splitOff }: Stay, later: Stay): boolean =>
  splitOff.length > 0 &&
  later.move.stock.every(({ kind }) => {
    const off = splitOff.filter(({ fromDay, isAll }) => isAll && fromDay <= later.inDay);
    return headOf(later.move.stock, kind) <= headOf(off, kind);
  });
/** Stays of one herd on the same days, each with one that began before it: a herd is in one place, and both count. One that was split is in several. */
export function twicePlaced(stays: readonly Stay[]): readonly (readonly [Stay, Stay])[] {
  const lastOut = new Map<number, Stay>();
  return stays.flatMap((stay): readonly (readonly [Stay, Stay])[] => {
    if (stay.isImpossible) return [];
    const { herdNumber } = stay.move;
    const before = lastOut.get(herdNumber);
    if (before === undefined || before.outDay <= stay.outDay) lastOut.set(herdNumber, stay);
    return before !== undefined && stay.inDay < before.outDay && before.inDay < stay.outDay && !isPart(before, stay) ? [[before, stay]] : [];
  });
}
/** Another stay of the same herd on days of this one. */
export const alsoThen = (stays: readonly Stay[], { id }: MoveRow): Stay | undefined =>
  twicePlaced(stays)
    .find((pair) => pair.some(({ move }) => move.id === id))
    ?.find(({ move }) => move.id !== id);
