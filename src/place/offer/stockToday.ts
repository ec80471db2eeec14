import type { Place } from '../model/place.ts';
import type { StockLine } from '../model/row.ts';
import { counted, eachLbPerDay } from './herdEats.ts';
import { kindNames } from './kindNames.ts';
import { mainOf } from './mainOf.ts';

/** As fine as lines of the record keep what one eats: a measure less fine than they are would make the sums of stays others than theirs. */
const hundredths = (value: number): number => Math.round(value * 100) / 100;

/** What grazes with one herd on a day, as a line of the record keeps it. */
export const stockToday = ({ herd }: Place, number: number, todayDay: number): StockLine[] =>
  counted(herd)
    .filter(({ herdNumber = 1 }) => herdNumber === number)
    .map((group): StockLine => {
      const lbPerDay = eachLbPerDay(group, todayDay);
      return {
        kind: group.kind,
        countHead: group.countHead,
        ...(group.weightLb === undefined ? {} : { weightLb: group.weightLb }),
        ...(lbPerDay === undefined ? {} : { lbPerDay: hundredths(lbPerDay) }),
      };
    });

/** What one eats of a kind and weight that a table names, as the place has such stock. */
export function lbPerDayOf({ herd }: Place, { kind, weightLb }: Pick<StockLine, 'kind' | 'weightLb'>, day: number): number | undefined {
  const group = herd.find((each) => each.kind === kind) ?? { id: kind, kind };
  const known = { ...group, countHead: 1, ...(weightLb === undefined ? {} : { weightLb }) };
  const lbPerDay = eachLbPerDay(known, day);
  return lbPerDay === undefined ? undefined : hundredths(lbPerDay);
}

/** The measure of a stock-day: as the place has set it, else what one of the main kind eats today. */
export function yardstickOf(
  place: Place,
  todayDay: number,
): { readonly lbPerDay: number; readonly isSet: boolean; readonly of?: string } | undefined {
  const main = mainOf(counted(place.herd), todayDay);
  const named = main === undefined ? {} : { of: kindNames[main.kind].toLowerCase() };
  if (place.yardstickLbPerDay !== undefined && place.yardstickLbPerDay > 0) return { lbPerDay: place.yardstickLbPerDay, isSet: true, ...named };
  const lbPerDay = main && eachLbPerDay(main, todayDay);
  return lbPerDay === undefined || lbPerDay <= 0 ? undefined : { lbPerDay: hundredths(lbPerDay), isSet: false, ...named };
}
