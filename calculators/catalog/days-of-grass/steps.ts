import { eatenAsGiven, stockLinesStep } from '../../asks/stock.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { byCase, formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import { type compute, longestDays } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;
export type Values = ValuesOf<typeof inputs> & Results;

/** Is there a day on which it is gone? */
export const runsOut = ({ verdict }: Pick<Values, 'verdict'>): boolean => verdict === 'short' || verdict === 'lasts';
export const isShort = ({ verdict }: Pick<Values, 'verdict'>): boolean => verdict === 'short';
/** More head than there are of the kind that eats most: then others must go too. */
export const isAllAndMore = ({ goTodayHead, mainHead }: Pick<Values, 'goTodayHead' | 'mainHead'>): boolean => goTodayHead > mainHead;
/** More are said to be able to leave than there are. */
export const leavesAll = ({ verdict, leaveHead, canGoHead }: Pick<Values, 'verdict' | 'leaveHead' | 'canGoHead'>): boolean =>
  verdict === 'short' && leaveHead < canGoHead;
export const canSellEnough = ({ verdict, missingHead }: Pick<Values, 'verdict' | 'missingHead'>): boolean => verdict === 'short' && missingHead === 0;

export const steps: Working<Values, Results> = [
  tabulate('stockLines', stockLinesStep),
  lookup('usedLbPerAcIn', {
    says: 'Pounds in an inch: the middle of what is printed for this stand.',
    onlyWhen: ({ densityFrom }) => densityFrom === 'list',
    source: 'umaine-pasture-lesson-1, appendix D',
  }),
  formula('usedLbPerAcIn', tex`\q{densityLbPerAcIn}`, {
    says: 'Pounds in an inch, as you have clipped them.',
    onlyWhen: ({ densityFrom }) => densityFrom === 'own',
  }),
  formula('availableLbPerAc', tex`\max(0, \q{heightIn} - \q{stopHeightIn}) \times \q{usedLbPerAcIn}`, {
    says: 'What stands above the height that you leave. The stubble comes off here, once.',
    source: 'umaine-pasture-lesson-1, appendix D',
  }),
  lookup('eatenPercent', {
    says: 'Share of that eaten in a pasture that is grazed without a move until it is gone: the middle of what is printed for continuous grazing.',
    onlyWhen: ({ eatenFrom }) => eatenFrom === 'until-gone',
    source: 'uga-forage-team-2021',
  }),
  lookup('eatenPercent', {
    says: 'Share of that eaten in a stay of up to seven days.',
    onlyWhen: ({ eatenFrom }) => eatenFrom === 'week',
    source: 'penn-state-agronomy-guide, table 1.8-9',
  }),
  formula('eatenPercent', tex`\q{ownEatenPercent}`, eatenAsGiven),
  formula('eatenLb', tex`\q{availableLbPerAc} \times \q{eatenPercent} / 100 \times \q{areaAc} \times \q{reachPercent} / 100`, {
    says: 'What stock will eat of it, on all the ground that they use.',
    source: 'rangelands-gateway-matching, step a',
  }),
  formula('growthLbPerDay', tex`\q{growthLbPerAcDay} \times \q{eatenPercent} / 100 \times \q{areaAc} \times \q{reachPercent} / 100`, {
    says: 'What still grows in a day, and will be eaten. The same share of it is lost.',
    source: 'penn-state-agronomy-guide, table 1.8-9',
  }),
  formula('netLbPerDay', tex`\q{demandLbPerDay} - \q{growthLbPerDay}`, { says: 'So much less stands each day.' }),
  lookup('verdict', {
    says: 'At or below the height that you leave there is nothing to graze.',
    onlyWhen: ({ verdict }) => verdict === 'nothing',
    source: 'common practice',
  }),
  lookup('verdict', {
    says: 'It grows as fast as they eat, so there is nothing to divide by. That holds as long as the growth does.',
    onlyWhen: ({ verdict }) => verdict === 'keeps-up',
    source: 'our own',
  }),
  when(
    ({ verdict }) => verdict !== 'nothing' && verdict !== 'keeps-up',
    [
      formula('lastsDays', tex`\min(${longestDays}, \frac{\q{eatenLb}}{\q{netLbPerDay}})`, {
        says: 'Days that it lasts; nobody plans past a year.',
        source: 'umaine-pasture-lesson-1, appendix D',
      }),
      lookup('wholeDays', { says: 'A part of a day is no day: it is dropped.', source: 'our own' }),
      lookup('offDay', { says: 'So many days after today.', source: 'our own' }),
    ],
  ),
  tabulate('rangeEnds', {
    says: 'The same at both ends: half an inch lower and higher, the printed ends of pounds in an inch and of the share eaten, and the appetite of each kind at both ends: 17 percent more and less for grown cattle and for stock not listed, the most and the least that guides print for the others. The half inch, and 5 percent either way for a stay within a week, are our own.',
    source: 'gross-intake, abstract, with mullenix-2022, schoenian-intake, luling-foundation and texas-animal-units',
    formulas: {
      endAvailableLbPerAc: tex`\max(0, \q{endHeightIn} - \q{stopHeightIn}) \times \q{endLbPerAcIn}`,
      endEatenLb: tex`\q{endAvailableLbPerAc} \times \q{endEatenPercent} / 100 \times \q{areaAc} \times \q{reachPercent} / 100`,
      endGrowthLbPerDay: tex`\q{growthLbPerAcDay} \times \q{endEatenPercent} / 100 \times \q{areaAc} \times \q{reachPercent} / 100`,
      endNetLbPerDay: tex`\q{endDemandLbPerDay} - \q{endGrowthLbPerDay}`,
      endDays: [
        { when: ({ endNetLbPerDay }) => endNetLbPerDay <= 0, formula: `${longestDays}`, because: 'growth keeps up, and nobody plans past a year' },
        { formula: tex`\min(${longestDays}, \frac{\q{endEatenLb}}{\q{endNetLbPerDay}})` },
      ],
    },
  }),
  when(runsOut, [
    lookup('lowOffDay', { says: 'The whole days of the low end, {lowWholeDays}, after today: plan on it.', source: 'our own' }),
    tabulate('dayByDay', {
      says: 'What is left for the stock, day by day. It falls by the same each day.',
      source: 'our own',
      formulas: { leftLb: tex`\max(0, \q{eatenLb} - \q{netLbPerDay} \times \q{afterDays})` },
    }),
    lookup('untilDays', { says: 'From today to the day to which it must last.', source: 'our own' }),
  ]),
  formula('spareDays', tex`\q{wholeDays} - \q{untilDays}`, { says: 'Whole days to spare.', onlyWhen: ({ verdict }) => verdict === 'lasts' }),
  when(isShort, [
    formula('wholeShortDays', tex`\q{untilDays} - \q{wholeDays}`, { says: 'Days that must be fed another way, if all stay.' }),
    lookup('eachLbPerDay', {
      says: 'What one of the kind eats that eats most, all its head together. Heads that leave are counted in it.',
      source: 'our own',
    }),
    formula('herdHead', tex`\frac{\q{demandLbPerDay}}{\q{eachLbPerDay}}`, { says: 'All stock, counted in that kind.' }),
    formula('lastingLb', tex`\q{eatenLb} + \q{growthLbPerDay} \times \q{untilDays}`, { says: 'What there is to eat until that day.' }),
    tabulate('goingOn', {
      says: 'Head that must leave so that the rest lasts until that day. Each day of waiting is eaten by all of them, so the number grows; it is rounded up.',
      source: 'our own',
      formulas: {
        exactHead: tex`\min(\q{herdHead}, \max(0, \q{herdHead} - \frac{\q{lastingLb} / \q{eachLbPerDay} - \q{herdHead} \times \q{afterDays}}{\q{untilDays} - \q{afterDays}}))`,
      },
    }),
    lookup('goTodayHead', { says: 'The first of those, today.', source: 'our own' }),
  ]),
  byCase('missingHead', {
    says: 'Head that would have to leave today, past those that can.',
    onlyWhen: (values) => isShort(values) && !canSellEnough(values),
    ways: [{ formula: tex`\q{goTodayHead} - \q{canGoHead}` }],
  }),
  lookup('leaveHead', {
    says: 'More head could leave, by what you gave, than there are: all stock is counted.',
    onlyWhen: leavesAll,
    source: 'our own',
  }),
  lookup('sellByDay', {
    says: 'The last whole day for {leaveHead} to leave: the same rule, turned round.',
    onlyWhen: canSellEnough,
    source: 'our own',
  }),
];
