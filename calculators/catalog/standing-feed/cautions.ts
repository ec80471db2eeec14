import type { Refusal } from '../../kit/refusals.ts';
import { monthIndexOf, yearOf } from '../../units/days.ts';
import { fromStartPercentOf, waitMonthsOf } from './compute.ts';
import type { inputs } from './inputs.ts';

const yearDays = 365;
/** June, July and August, counted from 0 for January. */
const summerMonths: readonly number[] = [5, 6, 7];
/**
 * Can any day of grazing, to the far end of the range, lie outside June, July and August? In those three months alone neither ice nor snow shuts off grass
 * where these pages are used, all of it north of the equator; common practice.
 */
export const meetsWinter = ({ startDay, highGrazingDays }: { readonly startDay: number; readonly highGrazingDays: number }): boolean => {
  const endDay = startDay + Math.max(0, highGrazingDays - 1);
  return yearOf(startDay) !== yearOf(endDay) || [startDay, endDay].some((day) => !summerMonths.includes(monthIndexOf(day)));
};

/** April through September, counted from 0 for January: grass that is saved for winter grows in these months; common practice. */
const growingMonths: readonly number[] = [3, 4, 5, 6, 7, 8];
/** Was it measured while it grew, to be grazed when it no longer does? Annual range is dead from late spring on, and is asked of by itself. */
export const isMeasuredGrowing = ({
  feed,
  measuredDay,
  startDay,
}: {
  readonly feed: string;
  readonly measuredDay: number;
  readonly startDay: number;
}): boolean => {
  const isGrowing = (day: number): boolean => growingMonths.includes(monthIndexOf(day));
  return !feed.startsWith('annual-range') && isGrowing(measuredDay) && (!isGrowing(startDay) || yearOf(startDay) !== yearOf(measuredDay));
};

export const refusals: readonly Refusal<typeof inputs>[] = [
  {
    at: 'stubbleLbPerAc',
    when: ({ massFrom, standingLbPerAc, stubbleLbPerAc }) => massFrom === 'known' && stubbleLbPerAc >= standingLbPerAc,
    say: 'The stubble takes all that stands, so there is nothing to graze. Leave less, or keep stock off this field.',
  },
  {
    at: 'stubbleHeightIn',
    when: ({ massFrom, heightIn, stubbleHeightIn }) => massFrom === 'height' && stubbleHeightIn >= heightIn,
    say: 'The stubble is as tall as the stand, so there is nothing to graze. Leave less, or keep stock off this field.',
  },
  {
    at: 'startDay',
    when: ({ measuredDay, startDay }) => startDay < measuredDay || startDay - measuredDay > yearDays,
    say: 'Grazing must start on the day it was measured or within a year after it.',
  },
  {
    at: 'startDay',
    when: ({ fromDay, startDay }) => startDay < fromDay,
    say: 'Grazing starts before feed is wanted. Start later, or set the day from which feed is wanted earlier.',
  },
  {
    at: 'untilDay',
    when: ({ fromDay, startDay, untilDay }) => untilDay <= startDay || untilDay - fromDay > yearDays,
    say: 'The day until which feed is wanted must come after the first day of grazing, within a year of the day from which it is wanted.',
  },
  {
    at: 'startDay',
    when: (values) =>
      values.startDay >= values.measuredDay &&
      (values.lossPercent * waitMonthsOf(values) >= 100 || fromStartPercentOf(values.lossPercent, waitMonthsOf(values)) > 100),
    say: 'By that day weather has taken nearly all of it. Start sooner, or check the loss in a month.',
  },
];
