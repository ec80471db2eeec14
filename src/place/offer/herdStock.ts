import type { Place } from '../model/place.ts';
import type { StockLine } from '../model/row.ts';
import type { Herd } from '../record/herds.ts';
import { counted } from './herdEats.ts';
import { stockToday } from './stockToday.ts';

/** Kinds and head, each kind once, with its head added up. */
function byKind(lines: readonly StockLine[]): readonly StockLine[] {
  const sums = new Map<StockLine['kind'], StockLine>();
  for (const line of lines) sums.set(line.kind, { ...line, countHead: line.countHead + (sums.get(line.kind)?.countHead ?? 0) });
  return [...sums.values()];
}
const headOf = (lines: readonly StockLine[], kind: StockLine['kind']): number =>
  lines.reduce((sum, line) => sum + (line.kind === kind ? line.countHead : 0), 0);

export interface HerdStock {
  readonly stock: readonly StockLine[];
  /** Whether what each line of its parts holds adds up to it: else they are lines of from before it was split, or copies of one. */
  readonly isShared: boolean;
}
/**
 * What goes with a herd on a day, each head once. It is what the lines of its stays hold, but never more than the place now counts with that herd: a line
 * is a copy of its day, and what was split off since is told where that stands. A herd that only the record knows is what its lines say.
 */
export function herdStock(place: Place, { number, parts }: Herd, day: number): HerdStock {
  const told = stockToday(place, number, day);
  const all = byKind(parts.flatMap(({ stock }) => stock));
  if (all.length === 0) return { stock: told, isShared: false };
  const first = parts[0]?.stock ?? [];
  const isCopied = parts.length > 1 && parts.every(({ stock }) => JSON.stringify(byKind(stock)) === JSON.stringify(byKind(first)));
  if (told.length === 0) return { stock: isCopied ? byKind(first) : all, isShared: !isCopied };
  const most = all.map((line) => ({ ...line, countHead: Math.min(line.countHead, headOf(told, line.kind)) }));
  const stock = most.filter(({ countHead }) => countHead > 0);
  const isShared = all.every(({ kind, countHead }) => countHead <= headOf(told, kind));
  return { stock: stock.length === 0 ? told : stock, isShared };
}

/** Kinds of which herds that only the record knows make more than the place counts, each as one line: somebody has to say whether they were split off. */
export function moreThanTold(
  place: Place,
  herds: readonly Herd[],
  day: number,
): readonly { readonly there: StockLine; readonly told: StockLine; readonly numbers: readonly number[] }[] {
  const own = byKind(counted(place.herd));
  const isOwn = (number: number): boolean => place.herd.some(({ herdNumber = 1 }) => herdNumber === number);
  const standing = herds.map((herd) => ({ number: herd.number, stock: herdStock(place, herd, day).stock }));
  const all = standing.flatMap(({ stock }) => stock);
  return own.flatMap((told) => {
    const there = { ...told, countHead: headOf(all, told.kind) };
    const numbers = standing.filter(({ number, stock }) => !isOwn(number) && headOf(stock, told.kind) > 0).map(({ number }) => number);
    return there.countHead > told.countHead && numbers.length > 0 ? [{ there, told, numbers }] : [];
  });
}
