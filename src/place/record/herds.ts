import type { Place } from '../model/place.ts';
import type { MoveRow, Row } from '../model/row.ts';
import { goneDayOf, rowsOf } from './days.ts';

/** A herd that is moved as one. */
export interface Herd {
  readonly number: number;
  /** Where it stands, if the record knows: in several places where it was split, the latest move last. */
  readonly parts: readonly MoveRow[];
}

/** The herds of a place by their numbers, those too that only the record knows; each stands where its moves that have not ended by today took it. */
export function herdsOf({ herd }: Place, rows: readonly Row[], todayDay: number): readonly Herd[] {
  const open = rowsOf(rows, 'move').filter((move) => goneDayOf(move, todayDay) === undefined);
  const numbers = new Set([...herd.map(({ herdNumber = 1 }) => herdNumber), ...open.map(({ herdNumber }) => herdNumber)]);
  if (numbers.size === 0) numbers.add(1);
  return [...numbers]
    .filter((number) => number >= 1)
    .toSorted((one, other) => one - other)
    .map((number) => ({ number, parts: open.filter(({ herdNumber }) => herdNumber === number) }));
}
