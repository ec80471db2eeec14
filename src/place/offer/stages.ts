import type { Stage } from '../../../calculators/math/herd/stageFromBirth.ts';
import { sameDayIn, yearOf } from '../../../calculators/units/days.ts';
import { dayOf } from '../../../calculators/units/printQuantity.ts';
import type { HerdGroup } from '../model/herdGroup.ts';
import type { StockKind } from '../model/words.ts';
import { likelyPercents } from './likelyPercents.ts';

/** Days that the young suckle, and days before birth in which she eats for it, by kind: common practice. */
const suckling: Readonly<Partial<Record<StockKind, readonly [nursingDays: number, lateDays: number]>>> = {
  cow: [205, 60],
  heifer: [205, 60],
  ewe: [90, 42],
  doe: [90, 42],
  horse: [183, 60],
};

/** Whether a kind carries or nurses young. */
export const isBreeding = (kind: StockKind): boolean => suckling[kind] !== undefined;

/** The day of a year, for `04-20`. Feb 29 is Feb 28 where there is none. */
export function inYear(monthDay: string, year: number): number {
  const day = dayOf(`2000-${monthDay}`);
  if (day === undefined) throw new RangeError(`inYear needs a month and day, got ${monthDay}`);
  return sameDayIn(day, year);
}
/** Days since the last birth, up to a year. */
export function daysSinceBirth(birthsDay: string, todayDay: number): number {
  const thisYear = inYear(birthsDay, yearOf(todayDay));
  return todayDay - (thisYear <= todayDay ? thisYear : inYear(birthsDay, yearOf(todayDay) - 1));
}
/** So long what somebody told of a group still holds: no kind nurses for less once it has begun (common practice: lambs and kids suckle about 90 days). */
const toldDays = 90;

/** How a group stands today. Without a day of birth it stands as it was told of late, else it is dry: it gives none. */
export function stageOf({ kind, birthsDay, told }: Pick<HerdGroup, 'kind' | 'birthsDay' | 'told'>, todayDay: number): Stage {
  const days = suckling[kind];
  if (days === undefined) return 'dry';
  if (birthsDay === undefined) {
    const toldDay = told && dayOf(told.day);
    return toldDay !== undefined && Math.abs(todayDay - toldDay) <= toldDays ? (told?.stage ?? 'dry') : 'dry';
  }
  const [nursingDays, lateDays] = days;
  if (daysSinceBirth(birthsDay, todayDay) < nursingDays) return 'nursing';
  const thisYear = inYear(birthsDay, yearOf(todayDay));
  const next = thisYear >= todayDay ? thisYear : inYear(birthsDay, yearOf(todayDay) + 1);
  return next - todayDay <= lateDays ? 'late' : 'dry';
}

/** What one eats in a day at a stage, percent of its weight: what somebody knows of the own stock first, else the likely one of the guides. */
export const intakePercentAt = ({ kind, ownIntakePercent }: Pick<HerdGroup, 'kind' | 'ownIntakePercent'>, stage: Stage): number =>
  ownIntakePercent ?? likelyPercents[kind][stage] ?? likelyPercents[kind].dry;
