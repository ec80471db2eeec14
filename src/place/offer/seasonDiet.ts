import type { Stage } from '../../../calculators/math/herd/stageFromBirth.ts';
import { sameDayIn } from '../../../calculators/units/days.ts';
import { printDay } from '../../../calculators/units/printQuantity.ts';
import type { HerdGroup } from '../model/herdGroup.ts';
import type { Place } from '../model/place.ts';
import { intakePercentAt, inYear, isBreeding, stageOf } from './stages.ts';

/** Days of a year of no leap day: turn-in, and the one on which the grass must no longer last. */
interface Span {
  readonly fromDay: number;
  readonly endDay: number;
  /** `mean of Apr 20 to Oct 31` */
  readonly says: string;
}
const anyYear = 2001;
/** Where a place tells none, as the examples of forms have it. */
const usualTurnIn = '04-20';
const usualEnd = '10-31';
const usualHayFrom = '11-01';
export const withoutYear = (day: number): string => printDay(day).replace(/, \d{4}$/, '');

function spanOf(from: string, end: string): Span {
  const fromDay = inYear(from, anyYear);
  const inFirst = inYear(end, anyYear);
  const endDay = inFirst > fromDay ? inFirst : inYear(end, anyYear + 1);
  return { fromDay, endDay, says: `mean of ${withoutYear(fromDay)} to ${withoutYear(endDay)}` };
}
/** The days on grass of a place, the same on whatever day it is asked. */
export const grazingSeason = (season: Place['season']): Span => spanOf(season?.turnInDay ?? usualTurnIn, season?.endDay ?? usualEnd);
/** The days from the first on hay to turn-in, in which feed kept for winter is grazed. */
export const winter = (season: Place['season']): Span => spanOf(season?.hayFromDay ?? usualHayFrom, season?.turnInDay ?? usualTurnIn);

interface SeasonDiet {
  /** The one of most days: of as many, the one that comes first. */
  readonly stage: Stage;
  /** Percent of weight in a day, the mean of all days. */
  readonly intakePercent: number;
  /** Where births move it in that time. */
  readonly says: string | undefined;
}
/**
 * What a group eats on the mean of the grazing season, each day at its stage. Without a day of birth it stands all through as somebody told last,
 * however long ago, else dry: which day it is today says nothing of the season.
 */
export function seasonDiet(group: HerdGroup, { fromDay, endDay, says }: Span): SeasonDiet {
  if (group.birthsDay === undefined || !isBreeding(group.kind)) {
    const stage = isBreeding(group.kind) ? (group.told?.stage ?? 'dry') : 'dry';
    return { stage, intakePercent: intakePercentAt(group, stage), says: undefined };
  }
  const daysOf = new Map<Stage, number>();
  for (let day = fromDay; day < endDay; day += 1) {
    const stage = stageOf(group, day);
    daysOf.set(stage, (daysOf.get(stage) ?? 0) + 1);
  }
  const stages = [...daysOf].toSorted(([, one], [, other]) => other - one);
  const total = stages.reduce((sum, [stage, days]) => sum + days * intakePercentAt(group, stage), 0);
  return { stage: stages[0]?.[0] ?? 'dry', intakePercent: total / (endDay - fromDay), says: stages.length > 1 ? says : undefined };
}

/** The same of the winter: without a day of birth it stands as somebody told in such a winter, else dry, for what nurses in summer says nothing of December. */
export function winterDiet(group: HerdGroup, days: Span): SeasonDiet {
  const { told, ...untold } = group;
  const toldDay = told === undefined ? undefined : inYear(told.day.slice(5), anyYear);
  const isInWinter = toldDay !== undefined && [toldDay, sameDayIn(toldDay, anyYear + 1)].some((day) => day >= days.fromDay && day < days.endDay);
  return seasonDiet(isInWinter ? group : untold, days);
}
