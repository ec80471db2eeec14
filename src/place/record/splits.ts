import type { Place } from '../model/place.ts';
import type { MoveRow, StockLine } from '../model/row.ts';
import { goneDayOf, inDayOf } from './days.ts';

type Kind = StockLine['kind'];
/** Head of one kind that a line holds, and that stand in a later line from a day on. */
export interface SplitOff {
  readonly kind: Kind;
  readonly countHead: number;
  readonly fromDay: number;
  /** With it all is found again that the line lost. Else some are gone, or nobody wrote down that all went. */
  readonly isAll: boolean;
}
/** A line as far as one kind goes. */
interface Line {
  readonly move: MoveRow;
  readonly herdNumber: number;
  readonly inDay: number;
  /** Infinite while they are there. */
  readonly outDay: number;
  readonly head: number;
}
export const headOf = (stock: readonly { readonly kind: string; readonly countHead?: number | undefined }[], kind: Kind): number =>
  stock.reduce((sum, line) => sum + (line.kind === kind ? (line.countHead ?? 0) : 0), 0);
const headIn = (lines: readonly Line[]): number => lines.reduce((sum, { head }) => sum + head, 0);

/** What stands in a line still. */
export const stockLeft = (stock: readonly StockLine[], splitOff: readonly Pick<SplitOff, 'kind' | 'countHead'>[]): readonly StockLine[] => {
  const off = new Map<Kind, number>();
  for (const { kind, countHead } of splitOff) off.set(kind, (off.get(kind) ?? 0) + countHead);
  return stock.flatMap((line) => {
    const gone = Math.min(line.countHead, off.get(line.kind) ?? 0);
    off.set(line.kind, (off.get(line.kind) ?? 0) - gone);
    return gone === line.countHead ? [] : { ...line, countHead: line.countHead - gone };
  });
};

/** What began while one went on. A line of its herd that holds as many is no part of it: all of them are on both grounds. */
function begunMeanwhile(lines: readonly Line[], index: number, { herdNumber, inDay, outDay, head }: Line): readonly Line[] {
  const begun: Line[] = [];
  for (const each of lines.slice(index + 1)) {
    if (each.inDay >= outDay) break;
    if (each.inDay > inDay && (each.herdNumber !== herdNumber || each.head < head)) begun.push(each);
  }
  return begun;
}
/**
 * What was split off each line while it went on. No line says so: a herd stays in its old line, and a part of it begins another elsewhere. So head that a
 * later line holds, and that came from no line which ended meanwhile, is off the line that went on, but only as far as that one has lost any: a closed one
 * by what its herd went on with, an open one by what the place now counts with its herd, less what stands in that herd's other lines. Where neither is
 * known nothing is off.
 * @param moves - The earliest first
 */
export function splitsOf({ herd }: Pick<Place, 'herd'>, moves: readonly MoveRow[], todayDay: number): ReadonlyMap<MoveRow, readonly SplitOff[]> {
  const splits = new Map<MoveRow, readonly SplitOff[]>();
  for (const kind of new Set(moves.flatMap(({ stock }) => stock.map((line) => line.kind)))) {
    const lines = moves
      .map((move): Line => {
        const outDay = goneDayOf(move, todayDay) ?? Infinity;
        return { move, herdNumber: move.herdNumber, inDay: inDayOf(move), outDay, head: headOf(move.stock, kind) };
      })
      .filter(({ inDay, outDay, head }) => head > 0 && inDay <= outDay && inDay <= todayDay);
    const lostBy = (line: Line): number => {
      const { herdNumber, outDay, head } = line;
      const ofHerd = lines.filter((each) => each !== line && each.herdNumber === herdNumber);
      const others = ofHerd.filter((each) => each.outDay === outDay);
      if (outDay === Infinity) {
        const now = herd.filter((group) => (group.herdNumber ?? 1) === herdNumber);
        return now.length === 0 ? 0 : head - Math.max(0, headOf(now, kind) - headIn(others.filter((each) => each.head < head)));
      }
      const next = ofHerd.filter((each) => each.inDay === outDay);
      return next.length === 0 ? 0 : head - Math.max(0, headIn(next) - headIn(others));
    };
    /** Head of a line that is off another is off that one alone. */
    const found = new Map<Line, number>();
    for (const [index, line] of lines.entries()) {
      const begun = begunMeanwhile(lines, index, line);
      let lost = begun.length === 0 ? 0 : lostBy(line);
      if (lost <= 0) continue;
      /** What ended meanwhile went on in what its herd began next. */
      const free = new Map(lines.filter((each) => each !== line && each.outDay > line.inDay).map((each) => [each, each.head]));
      const own: Omit<SplitOff, 'isAll'>[] = [];
      for (const part of begun) {
        let left = part.head - (found.get(part) ?? 0);
        for (const [each, head] of free) {
          if (each.herdNumber !== part.herdNumber || each.outDay > part.inDay) continue;
          const came = Math.min(head, left);
          free.set(each, head - came);
          left -= came;
        }
        const countHead = Math.min(lost, left);
        if (countHead <= 0) continue;
        lost -= countHead;
        found.set(part, (found.get(part) ?? 0) + countHead);
        own.push({ kind, countHead, fromDay: part.inDay });
      }
      const isAll = lost === 0;
      splits.set(line.move, [...(splits.get(line.move) ?? []), ...own.map((each) => ({ ...each, isAll }))]);
    }
  }
  return splits;
}
