import type { Refusal } from '../../kit/refusals.ts';
import { fromStartPercentOf, waitMonthsOf } from './compute.ts';
import type { inputs } from './inputs.ts';

const yearDays = 365;

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
