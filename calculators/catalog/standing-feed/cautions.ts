import { northernMonth } from '../../asks/south.ts';
import type { Refusal } from '../../kit/refusals.ts';
import { fromStartPercentOf, waitMonthsOf } from './compute.ts';
import type { inputs } from './inputs.ts';

const yearDays = 365;
/** June, July and August, counted from 0 for January; in the south December to February. */
const summerMonths: readonly number[] = [5, 6, 7];
const summerDays = 92;
/**
 * Can any day of grazing, to the far end of the range, lie outside the three months of summer? In those alone neither ice nor snow shuts off grass where
 * these pages are used; common practice.
 */
export const meetsWinter = ({
  startDay,
  highGrazingDays,
  isSouth,
}: {
  readonly startDay: number;
  readonly highGrazingDays: number;
  readonly isSouth: boolean;
}): boolean => {
  const endDay = startDay + Math.max(0, highGrazingDays - 1);
  return endDay - startDay > summerDays || [startDay, endDay].some((day) => !summerMonths.includes(northernMonth(day, isSouth)));
};

/** April through September, counted from 0 for January, in the south half a year later: grass that is saved for winter grows in these months; common practice. */
const growingMonths: readonly number[] = [3, 4, 5, 6, 7, 8];
/** Two days in those months that lie farther apart are of two years. */
const growingDays = 182;
/** Was it measured while it grew, to be grazed when it no longer does? Annual range is dead from late spring on, and is asked of by itself. */
export const isMeasuredGrowing = ({
  feed,
  measuredDay,
  startDay,
  isSouth,
}: {
  readonly feed: string;
  readonly measuredDay: number;
  readonly startDay: number;
  readonly isSouth: boolean;
}): boolean => {
  const isGrowing = (day: number): boolean => growingMonths.includes(northernMonth(day, isSouth));
  return !feed.startsWith('annual-range') && isGrowing(measuredDay) && (!isGrowing(startDay) || startDay - measuredDay > growingDays);
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
