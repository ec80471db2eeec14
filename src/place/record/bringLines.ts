import type { Place } from '../model/place.ts';
import type { MoveRow, RainRow, Row, StockLine } from '../model/row.ts';
import type { LineRead, MoveLine, RainLine } from './csv.ts';
import { dayIn, rowsOf } from './days.ts';
import { groundsById } from './grounds.ts';
import { aLoad } from './loads.ts';
import type { Stay } from './stays.ts';

/** What is new of a row beside the head that each record has. */
type Body<R> = R extends Row ? Omit<R, 'id' | 'rev' | 'past' | 'changedBy' | 'changedAt' | 'v' | 'placeId' | 'clash'> : never;
export type RowBody = Body<Row>;

/** What a table would do, line by line, before anything is written. */
export interface Brought {
  readonly lines: readonly number[];
  readonly is: 'new' | 'changed' | 'same' | 'wrong';
  /** What was understood, or what is wrong. */
  readonly say: string;
  readonly adds: readonly RowBody[];
  readonly changes?: { readonly before: Row; readonly after: Row };
}
const spoken = (text: string): string => text.trim().toLowerCase();
const wrong = (lines: readonly number[], say: string): Brought => ({ lines, is: 'wrong', say, adds: [] });

/** The lines of one move: the same paddock, herd and day in. */
interface Gathered {
  readonly lines: number[];
  readonly first: MoveLine;
  readonly stock: StockLine[];
  readonly rest: MoveLine[];
}
function gathered(read: readonly LineRead<MoveLine>[]): readonly (Gathered | Brought)[] {
  const byMove = new Map<string, Gathered>();
  const out: (Gathered | Brought)[] = [];
  for (const { line, read: move, problem } of read) {
    if (move === undefined) {
      out.push(wrong([line], problem ?? 'This line cannot be read.'));
      continue;
    }
    const key = `${spoken(move.paddock)}|${move.herdNumber}|${move.inDay}`;
    const before = byMove.get(key);
    if (before === undefined) {
      const made: Gathered = { lines: [line], first: move, stock: move.stock === undefined ? [] : [move.stock], rest: [] };
      byMove.set(key, made);
      out.push(made);
    } else {
      before.lines.push(line);
      before.rest.push(move);
      if (move.stock !== undefined) before.stock.push(move.stock);
    }
  }
  return out;
}
const isBrought = (each: Gathered | Brought): each is Brought => 'is' in each;
/** One thing that lines of a move say in common, or two that do not agree. */
const agreed = <T>(values: readonly (T | undefined)[]): { readonly value?: T } | 'apart' => {
  const told = [...new Set(values.filter((each) => each !== undefined))];
  return told.length > 1 ? 'apart' : told[0] === undefined ? {} : { value: told[0] };
};

interface Bringing {
  readonly place: Place;
  readonly rows: readonly Row[];
  readonly stays: readonly Stay[];
  /** What one eats of a kind and weight on that day, where the table does not say. */
  readonly lbPerDayOf: (line: StockLine, day: number) => number | undefined;
  readonly sayMove: (move: RowBody & { readonly is: 'move' }, name: string) => string;
  readonly sayRain: (rain: RainLine) => string;
}
const isAlike = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

function bringMove({ place, rows, stays, lbPerDayOf, sayMove }: Bringing, { lines, first, stock, rest }: Gathered): Brought {
  const names = [...groundsById(place).values()].filter(({ name }) => spoken(name) === spoken(first.paddock));
  const [ground, second] = names;
  if (ground === undefined) return wrong(lines, `Your place has no paddock “${first.paddock.slice(0, 60)}”. Add it under Ground, or mend the name.`);
  if (second !== undefined) return wrong(lines, `Your place has two paddocks of the name “${ground.name}”. Give one another name.`);
  const all = [first, ...rest];
  const out = agreed(all.map(({ outDay }) => outDay));
  const [heightIn, heightOut] = [agreed(all.map((each) => each.heightInIn)), agreed(all.map((each) => each.heightOutIn))];
  const [word, hay] = [agreed(all.map((each) => each.word)), agreed(all.map((each) => each.hayLb))];
  if (out === 'apart' || heightIn === 'apart' || heightOut === 'apart' || word === 'apart' || hay === 'apart')
    return wrong(lines, 'These lines are of one move and do not say the same of it: day out, heights, hay and word must agree.');
  const inDay = dayIn(first.inDay);
  const known = stock.map((line) => {
    const lbPerDay = line.lbPerDay ?? lbPerDayOf(line, inDay);
    return {
      kind: line.kind,
      countHead: line.countHead,
      ...(line.weightLb === undefined ? {} : { weightLb: line.weightLb }),
      ...(lbPerDay === undefined ? {} : { lbPerDay }),
    };
  });
  const body = {
    is: 'move',
    paddockId: ground.id,
    herdNumber: first.herdNumber,
    inDay: first.inDay,
    ...(out.value === undefined ? {} : { outDay: out.value }),
    stock: known,
    ...(heightIn.value === undefined ? {} : { heightInIn: heightIn.value }),
    ...(heightOut.value === undefined ? {} : { heightOutIn: heightOut.value }),
    ...(word.value === undefined ? {} : { word: word.value }),
  } as const;
  const here = rowsOf(rows, 'move').find(
    (each) => each.paddockId === body.paddockId && each.herdNumber === body.herdNumber && each.inDay === body.inDay,
  );
  const stay = here && stays.find(({ move }) => move.id === here.id);
  const hasHay = stay !== undefined && (stay.hayLb > 0 || stay.isHayUnweighed);
  const adds: readonly RowBody[] =
    hay.value === undefined || hasHay ? [] : [{ is: 'hay', paddockId: ground.id, day: body.inDay, ...aLoad(hay.value) }];
  const named = { ...body, stock: [...known], paddockName: ground.name };
  const isOtherHay = hasHay && hay.value !== undefined && Math.round(hay.value) !== Math.round(stay.hayLb);
  const say = `${sayMove(named, ground.name)}${isOtherHay ? '. A table does not change hay that is here: mend it under “Hay fed”' : ''}`;
  if (here === undefined) return { lines, is: 'new', say, adds: [named, ...adds] };
  // What the table leaves empty is not taken away here.
  const after: MoveRow = { ...here, ...body, stock: known.length === 0 ? here.stock : [...known] };
  if (isAlike(sorted(here), sorted(after))) return { lines, is: adds.length > 0 ? 'changed' : 'same', say, adds };
  return { lines, is: 'changed', say, adds, changes: { before: here, after } };
}
const sorted = (record: object): unknown => Object.entries(record).toSorted(([one], [other]) => (one < other ? -1 : 1));

export const bringMoves = (bringing: Bringing, read: readonly LineRead<MoveLine>[]): readonly Brought[] =>
  gathered(read).map((each) => (isBrought(each) ? each : bringMove(bringing, each)));

export function bringRain({ rows, sayRain }: Pick<Bringing, 'rows' | 'sayRain'>, read: readonly LineRead<RainLine>[]): readonly Brought[] {
  const here = new Map(rowsOf(rows, 'rain').map((row) => [row.day, row]));
  const seen = new Set<string>();
  return read.map(({ line, read: rain, problem }): Brought => {
    if (rain === undefined) return wrong([line], problem ?? 'This line cannot be read.');
    if (seen.has(rain.day)) return wrong([line], `${rain.day} stands in this table twice. Leave one line of it.`);
    seen.add(rain.day);
    const before = here.get(rain.day);
    const say = sayRain(rain);
    if (before === undefined) return { lines: [line], is: 'new', say, adds: [{ is: 'rain', ...rain }] };
    const { isTrace: _, ...kept } = before;
    const after: RainRow = { ...kept, ...rain };
    return isAlike(sorted(before), sorted(after))
      ? { lines: [line], is: 'same', say, adds: [] }
      : { lines: [line], is: 'changed', say, adds: [], changes: { before, after } };
  });
}
