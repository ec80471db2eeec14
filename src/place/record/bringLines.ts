import type { Place } from '../model/place.ts';
import type { MoveRow, RainRow, Row, StockLine } from '../model/row.ts';
import type { LineRead, MoveLine, RainLine } from './csv.ts';
import { isSameAmount, type Measure, measures } from './csvColumns.ts';
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
  const grounds = [...groundsById(place).values()];
  const told = spoken(first.paddock);
  const named = grounds.find(({ name }) => spoken(name) === told);
  const [ground, second] = named === undefined ? grounds.filter(({ ownName }) => spoken(ownName) === told) : [named];
  if (ground === undefined) return wrong(lines, `Your place has no paddock “${first.paddock.slice(0, 60)}”. Add it under Ground, or mend the name.`);
  if (second !== undefined)
    return wrong(lines, `Your place has two paddocks of the name “${ground.ownName}”. Write “${ground.name}” or “${second.name}”.`);
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
  const line = { ...body, stock: [...known], paddockName: ground.name };
  // A table tells hay to the pound or the tenth of a kilogram.
  const isOtherHay = hasHay && hay.value !== undefined && Math.abs(hay.value - stay.hayLb) > 0.6;
  const say = `${sayMove(line, ground.name)}${isOtherHay ? '. A table does not change hay that is here: mend it under “Hay fed”' : ''}`;
  if (here === undefined) return { lines, is: 'new', say, adds: [line, ...adds] };
  // What the table leaves empty is not taken away here.
  const after = asHere({ ...here, ...body, stock: known.length === 0 ? here.stock : [...known] }, here);
  if (isAlike(sorted(here), sorted(after))) return { lines, is: adds.length > 0 ? 'changed' : 'same', say, adds };
  return { lines, is: 'changed', say, adds, changes: { before: here, after } };
}
/** A move of a table with the amounts that are here wherever it says the same: a metric table is told to so many digits. */
function asHere(move: MoveRow, here: MoveRow): MoveRow {
  const amount = <K extends string>(key: K, measure: Measure, read: { readonly [k in K]?: number | undefined }, kept: typeof read | undefined) => {
    const [value, before] = [read[key], kept?.[key]];
    return value !== undefined && before !== undefined && isSameAmount(value, before, measure) ? { [key]: before } : {};
  };
  return {
    ...move,
    ...amount('heightInIn', measures.heightIn, move, here),
    ...amount('heightOutIn', measures.heightOut, move, here),
    stock: move.stock.map((line, index) => ({
      ...line,
      ...amount('weightLb', measures.weight, line, here.stock[index]),
      ...amount('lbPerDay', measures.eaten, line, here.stock[index]),
    })),
  };
}
const sorted = (record: object): unknown => Object.entries(record).toSorted(([one], [other]) => (one < other ? -1 : 1));

export const bringMoves = (bringing: Bringing, read: readonly LineRead<MoveLine>[]): readonly Brought[] =>
  gathered(read).map((each) => (isBrought(each) ? each : bringMove(bringing, each)));

const isSameRain = (row: RainRow, { days, amountIn, isTrace }: RainLine): boolean =>
  row.days === days && (isTrace === true ? row.isTrace === true : row.isTrace !== true && isSameAmount(row.amountIn, amountIn, measures.rain));
function byDay<T extends { readonly day: string }>(all: readonly T[]): ReadonlyMap<string, readonly T[]> {
  const days = new Map<string, T[]>();
  for (const each of all) days.set(each.day, [...(days.get(each.day) ?? []), each]);
  return days;
}
type BroughtRain = Omit<Brought, 'lines'>;
/**
 * The lines of one day. A day may be read more than once, here and in a table: a line that says what a reading here says is that one; one line and one
 * reading that are left over are the same one, mended.
 */
function rainOfDay(lines: readonly RainLine[], here: readonly RainRow[], sayRain: Bringing['sayRain']): ReadonlyMap<RainLine, BroughtRain> {
  const brought = new Map<RainLine, BroughtRain>();
  const left = new Set(here);
  for (const line of lines) {
    const same = [...left].find((row) => isSameRain(row, line));
    if (same === undefined || !left.delete(same)) continue;
    brought.set(line, { is: 'same', say: sayRain(line), adds: [] });
  }
  const others = lines.filter((line) => !brought.has(line));
  const fresh = others.filter((line, index) => others.findIndex((each) => isAlike(each, line)) === index);
  const [before] = left;
  for (const line of others) {
    const say = sayRain(line);
    if (!fresh.includes(line)) brought.set(line, { is: 'wrong', say: `${line.day} stands in this table twice. Leave one line of it.`, adds: [] });
    else if (before === undefined)
      brought.set(line, {
        is: 'new',
        say: here.length + fresh.length > 1 ? `${say}. That day has more than one reading: they add up` : say,
        adds: [{ is: 'rain', ...line }],
      });
    else if (left.size > 1 || others.length > 1)
      brought.set(line, { is: 'wrong', say: `Your record has other readings of ${line.day}. Mend them there, under “Rain”.`, adds: [] });
    else {
      const { isTrace: _, ...kept } = before;
      brought.set(line, { is: 'changed', say, adds: [], changes: { before, after: { ...kept, ...line } } });
    }
  }
  return brought;
}

export function bringRain({ rows, sayRain }: Pick<Bringing, 'rows' | 'sayRain'>, read: readonly LineRead<RainLine>[]): readonly Brought[] {
  const here = byDay(rowsOf(rows, 'rain'));
  const days = byDay(read.flatMap(({ read: rain }) => rain ?? []));
  const brought = new Map([...days].flatMap(([day, lines]) => [...rainOfDay(lines, here.get(day) ?? [], sayRain)]));
  return read.map(({ line, read: rain, problem }): Brought => {
    const found = rain && brought.get(rain);
    return found === undefined ? wrong([line], problem ?? 'This line cannot be read.') : { lines: [line], ...found };
  });
}
