import { monthIndexOf, yearOf } from '../../../calculators/units/days.ts';
import type { Place } from '../model/place.ts';
import type { Row } from '../model/row.ts';
import { dayIn, dayOfRow, rainDays, rowsOf } from './days.ts';
import type { Stay } from './stays.ts';

/** Years of which the record holds anything, the latest first. */
export const yearsOf = (rows: readonly Row[]): readonly number[] =>
  [...new Set(rows.map((row) => yearOf(dayOfRow(row))))].toSorted((one, other) => other - one);

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

/** Sums by ground, in the order in which they were first grazed. A sum with an unknown part in it is no sum. */
export function groundYears(stays: readonly Stay[], year: number): readonly GroundYear[] {
  const byGround = new Map<string, Stay[]>();
  for (const stay of stays) {
    if (stay.isImpossible || yearOf(stay.inDay) !== year) continue;
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

/** Rain that was read in each month of a year, January first; nothing where no day of it was read. */
export function rainByMonth(rows: readonly Row[], year: number): readonly (number | undefined)[] {
  const months: (number | undefined)[] = Array.from({ length: 12 }, () => undefined);
  for (const [day, amountIn] of rainDays(rows)) if (yearOf(day) === year) months[monthIndexOf(day)] = (months[monthIndexOf(day)] ?? 0) + amountIn;
  return months;
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
  const firstYear = yearOf(firstDay);
  const turnIn = season?.turnInDay === undefined ? undefined : dayIn(`${firstYear}-${season.turnInDay === '02-29' ? '02-28' : season.turnInDay}`);
  const from = turnIn !== undefined && firstDay <= turnIn + lateStartDays ? firstYear : firstYear + 1;
  const years = new Set(rowsOf(rows, 'move').map(({ inDay }) => yearOf(dayIn(inDay))));
  return [...years].filter((year) => year >= from && year < yearOf(todayDay));
}
