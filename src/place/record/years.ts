import { firstOfMonth, monthIndexOf, yearOf } from '../../../calculators/units/days.ts';
import type { Place } from '../model/place.ts';
import type { MoveRow, Row } from '../model/row.ts';
import { dayIn, dayOfRow, goneDayOf, inDayOf, rainDays, rowsOf } from './days.ts';
import type { Stay } from './stays.ts';

/** Before this nobody kept a record that is here: a year like that is a slip of a key. */
const firstYear = 1900;
/** Years in which stock stood there by a move; at least the one in which they came. */
function yearsOfMove(move: MoveRow, todayDay: number): readonly number[] {
  const inDay = inDayOf(move);
  const year = yearOf(inDay);
  const last = yearOf(Math.max(inDay, (goneDayOf(move, todayDay) ?? todayDay) - 1));
  const from = Math.max(year + 1, firstYear);
  return [year, ...Array.from({ length: Math.max(0, last - from + 1) }, (_, index) => from + index)];
}
/** This year, and those of which the record holds anything, the latest first. */
export const yearsOf = (rows: readonly Row[], todayDay: number): readonly number[] =>
  [...new Set([yearOf(todayDay), ...rows.flatMap((row) => (row.is === 'move' ? yearsOfMove(row, todayDay) : [yearOf(dayOfRow(row))]))])].toSorted(
    (one, other) => other - one,
  );

/** What one ground gave in a year. */
export interface GroundYear {
  readonly name: string;
  readonly areaAc?: number;
  readonly stays: number;
  readonly days: number;
  readonly stockDaysPerAc?: number;
  readonly withHayPerAc?: number;
  readonly lbPerAc?: number;
  readonly hayLb: number;
}
const sumOf = (values: readonly (number | undefined)[]): number | undefined =>
  values.reduce<number | undefined>((sum, each) => (sum === undefined || each === undefined ? undefined : sum + each), 0);

/** Sums by ground of the stays of a year, in the order in which they were first grazed. A sum with an unknown part in it is no sum. */
export function groundYears(stays: readonly Stay[]): readonly GroundYear[] {
  const byGround = new Map<string, Stay[]>();
  for (const stay of stays) {
    if (stay.isImpossible) continue;
    const { paddockId } = stay.move;
    byGround.set(paddockId, [...(byGround.get(paddockId) ?? []), stay]);
  }
  return [...byGround.values()].flatMap((list) => {
    const [first] = list;
    if (first === undefined) return [];
    const [net, gross, lb] = [
      sumOf(list.map((each) => each.stockDaysPerAc)),
      sumOf(list.map((each) => each.withHayPerAc)),
      sumOf(list.map((each) => each.lbPerAc)),
    ];
    return [
      {
        name: first.name,
        ...(first.ground?.areaAc === undefined ? {} : { areaAc: first.ground.areaAc }),
        stays: list.length,
        days: list.reduce((sum, { days }) => sum + days, 0),
        ...(net === undefined ? {} : { stockDaysPerAc: net }),
        ...(gross === undefined ? {} : { withHayPerAc: gross }),
        ...(lb === undefined ? {} : { lbPerAc: lb }),
        hayLb: list.reduce((sum, { hayLb }) => sum + hayLb, 0),
      },
    ];
  });
}

export interface MonthRain {
  readonly amountIn: number;
  readonly readDays: number;
  /** Days of it until today. */
  readonly days: number;
}
/** Rain that was read in each month of a year, January first; nothing where no day of it was read. */
export function rainByMonth(rows: readonly Row[], year: number, todayDay: number): readonly (MonthRain | undefined)[] {
  const read = [...rainDays(rows)].filter(([day]) => yearOf(day) === year);
  return Array.from({ length: 12 }, (_, month) => {
    const here = read.filter(([day]) => monthIndexOf(day) === month);
    const [from, until] = [firstOfMonth(month, year), firstOfMonth(month + 1, year)];
    const last = Math.max(...here.map(([day]) => day), Math.min(todayDay, until - 1));
    return here.length === 0
      ? undefined
      : { amountIn: here.reduce((sum, [, amountIn]) => sum + amountIn, 0), readDays: here.length, days: last - from + 1 };
  });
}

/** So many days after turn-in a record may begin and still have the year whole: a first move is written when they go on. */
const lateStartDays = 21;
/**
 * Years that the record has whole: past ones, from the first that it had from turn-in on. Where the place does not tell when stock go out, the first
 * year of a record counts as cut off.
 */
export function wholeYears({ season }: Place, rows: readonly Row[], todayDay: number): readonly number[] {
  const [first] = rowsOf(rows, 'move');
  if (first === undefined) return [];
  const firstDay = dayIn(first.inDay);
  const begun = yearOf(firstDay);
  const turnIn = season?.turnInDay === undefined ? undefined : dayIn(`${begun}-${season.turnInDay === '02-29' ? '02-28' : season.turnInDay}`);
  const from = turnIn !== undefined && firstDay <= turnIn + lateStartDays ? begun : begun + 1;
  const years = new Set(rowsOf(rows, 'move').flatMap((move) => yearsOfMove(move, todayDay)));
  return [...years].filter((year) => year >= from && year < yearOf(todayDay));
}
