import type { ValuesOf } from '../../kit/inputs.ts';
import { byCase, formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;
type All = ValuesOf<typeof inputs> & Results;
const isSurvey = ({ yieldFrom }: All): boolean => yieldFrom === 'survey';
const isByGuide = ({ reachFrom }: All): boolean => reachFrom === 'guide';

export const steps: Working<All, Results> = [
  when(isSurvey, [
    byCase('eatenPercent', {
      says: 'One share, used once. A share eaten of the whole growth has left the stubble already; so has a yield measured above it.',
      source: 'white-b5036, harvest efficiency',
      ways: [
        { when: ({ yieldMeans }) => yieldMeans === 'eaten-of-growth', formula: tex`\q{harvestPercent}` },
        {
          when: ({ yieldMeans }) => yieldMeans === 'gone-of-growth',
          formula: tex`\frac{\q{gonePercent} \times \q{eatenOfGonePercent}}{100}`,
          because: 'gone is not eaten: a good part is trampled and lost',
        },
        { formula: tex`\q{grazedPercent}`, because: 'the stubble is not in the yield' },
      ],
    }),
    lookup('basisPercent', { says: 'The pounds given are {yieldBasis}. What stock eat has no water in it at all.', source: 'common practice' }),
    tabulate('reaches', {
      onlyWhen: isByGuide,
      says: 'What cattle use of each pasture, taken as round with one water in its middle: all of the circle within a mile of it, half of the ring from one mile to two, nothing past that. Ground of a circle goes by its radius times itself. Slopes of 10 to 30 % lose 30 %, to 60 % they lose 60 %, beyond that all (the slope steps are from memory).',
      source: 'rangelands-gateway-matching, step a, with holechek-1988; as rings of a circle: our own',
      formulas: {
        nearPercent: [
          { when: ({ waterDistanceMi }) => waterDistanceMi <= 1, formula: tex`100`, because: 'all of it lies within a mile' },
          {
            when: ({ waterDistanceMi }) => waterDistanceMi <= 2,
            formula: tex`100 \times \frac{1^2 + 0.5 \times (\q{waterDistanceMi}^2 - 1^2)}{\q{waterDistanceMi}^2}`,
          },
          { formula: tex`100 \times \frac{1^2 + 0.5 \times (2^2 - 1^2)}{\q{waterDistanceMi}^2}`, because: 'past two miles nothing more counts' },
        ],
        reachPercent: tex`\frac{\q{nearPercent} \times \q{slopeUsedPercent}}{100}`,
      },
    }),
    tabulate('grounds', {
      says: 'Each pasture: the acres that stock really use, and what they would eat there.',
      source: 'rangelands-gateway-matching, steps a and b',
      formulas: {
        usableAc: tex`\q{areaAc} \times \frac{\q{usablePercent}}{100}`,
        normalEatenLb: tex`\q{usableAc} \times \q{normalLbPerAc} \times \frac{\q{basisPercent}}{100} \times \frac{\q{eatenPercent}}{100}`,
        poorEatenLb: tex`\q{usableAc} \times \q{poorLbPerAc} \times \frac{\q{basisPercent}}{100} \times \frac{\q{eatenPercent}}{100}`,
      },
      sums: { usableAc: 'usableAc', normalYearLb: 'normalEatenLb', poorYearLb: 'poorEatenLb' },
    }),
  ]),
  tabulate('usualYears', {
    onlyWhen: (all) => !isSurvey(all),
    says: 'Each pasture as you ran it. That much was eaten, so no share comes off.',
    source: 'common practice',
    formulas: {
      usualEatenLb: tex`\q{usualHead} \times \q{lastedDays} \times \q{usualEatenLbPerDay}`,
      poorUsualLb: tex`\q{usualEatenLb} \times \frac{\q{poorPercent}}{100}`,
    },
    sums: { normalYearLb: 'usualEatenLb', poorYearLb: 'poorUsualLb' },
  }),
  lookup('endPercent', {
    onlyWhen: isSurvey,
    says: 'Share of the year’s growth that comes by {toDay}. What grows later feeds nobody before it.',
    source: 'nrcs-g058cy500nd, nrcs-colorado-curves, kstate-meadowlark-2024; four answers: our own',
  }),
  byCase('normalLb', {
    says: 'For this season, in a normal year',
    ways: [
      { when: isSurvey, formula: tex`\q{normalYearLb} \times \frac{\q{endPercent}}{100}` },
      { formula: tex`\q{normalYearLb}`, because: 'as it was run' },
    ],
  }),
  byCase('poorLb', {
    says: 'and in a poor one.',
    ways: [
      { when: isSurvey, formula: tex`\q{poorYearLb} \times \frac{\q{endPercent}}{100}` },
      { formula: tex`\q{poorYearLb}`, because: 'as it was run' },
    ],
  }),
  tabulate('kinds', {
    says: 'What the herd eats in a day, with the water out.',
    source: 'hibberd-thrift-1992, with luling-foundation and mullenix-2022',
    formulas: { eachLbPerDay: tex`\frac{\q{weightLb} \times \q{intakePercent}}{100}`, lineLbPerDay: tex`\q{countHead} \times \q{eachLbPerDay}` },
    sums: { herdLbPerDay: 'lineLbPerDay' },
  }),
  lookup('firstHead', { says: 'The first line is the kind that would go.', source: 'common practice' }),
  lookup('firstLbPerDay', { says: 'What one of them eats.', source: 'common practice' }),
  formula('othersLbPerDay', tex`\q{herdLbPerDay} - \q{firstHead} \times \q{firstLbPerDay}`, { says: 'The others are taken to stay.' }),
  lookup('grownPercent', {
    says: 'Of the season’s usual growth, the part that is due by {todayDay}.',
    source: 'nrcs-g058cy500nd, nrcs-colorado-curves, kstate-meadowlark-2024; four answers: our own',
  }),
  formula(
    'thisLb',
    tex`\q{normalLb} \times (\frac{\q{soFarPercent}}{100} \times \frac{\q{grownPercent}}{100} + \frac{\q{restPercent}}{100} \times (1 - \frac{\q{grownPercent}}{100}))`,
    {
      says: 'This year: what was due so far at {soFarPercent}, what is still due at {restPercent}.',
      source: 'our own, the two parts of the season added up',
    },
  ),
  lookup('seasonDays', { says: 'From {fromDay} to {toDay}.', source: 'common practice' }),
  formula('seasonNeedLb', tex`\q{herdLbPerDay} \times \q{seasonDays}`, { says: 'What the whole herd needs for it.' }),
  tabulate('years', {
    says: 'The years side by side: over or short, and the head of the first kind that each would carry after the others have eaten.',
    source: 'umaine-pasture-lesson-5, equation 1',
    formulas: {
      supplyLb: [
        { when: ({ year }) => year === 'normal', formula: tex`\q{normalLb}` },
        { when: ({ year }) => year === 'poor', formula: tex`\q{poorLb}` },
        { formula: tex`\q{thisLb}` },
      ],
      balanceLb: tex`\q{supplyLb} - \q{seasonNeedLb}`,
      yearHead: tex`\frac{\max(\q{supplyLb} - \q{othersLbPerDay} \times \q{seasonDays}, 0)}{\q{firstLbPerDay} \times \q{seasonDays}}`,
    },
  }),
  tabulate('shares', {
    says: 'The same with a share 15 points lower and higher: nobody weighs it.',
    onlyWhen: ({ yieldFrom }) => yieldFrom === 'survey',
    source: 'common practice',
    formulas: {
      shareNormalHead: tex`\frac{\max(\q{normalLb} \times \frac{\q{sharePercent}}{\q{eatenPercent}} - \q{othersLbPerDay} \times \q{seasonDays}, 0)}{\q{firstLbPerDay} \times \q{seasonDays}}`,
    },
  }),
  tabulate('monthLines', {
    says: 'By the end of each month: what has grown for them till then, less what they have eaten since turn-in. The share due is read off the curve.',
    source: 'nrcs-g058cy500nd, nrcs-colorado-curves, kstate-meadowlark-2024; four answers: our own',
    formulas: {
      normalAheadLb: tex`\q{normalLb} \times \frac{\q{duePercent}}{100} - \q{herdLbPerDay} \times \q{fedDays}`,
      poorAheadLb: tex`\q{poorLb} \times \frac{\q{duePercent}}{100} - \q{herdLbPerDay} \times \q{fedDays}`,
      thisAheadLb: tex`\q{normalLb} \times (\frac{\q{soFarPercent}}{100} \times \frac{\min(\q{duePercent}, \q{grownPercent})}{100} + \frac{\q{restPercent}}{100} \times \frac{\max(0, \q{duePercent} - \q{grownPercent})}{100}) - \q{herdLbPerDay} \times \q{fedDays}`,
    },
  }),
  formula(
    'otherBasisHead',
    tex`\frac{\max(\q{normalLb} \times \frac{\q{otherBasisPercent}}{\q{basisPercent}} - \q{othersLbPerDay} \times \q{seasonDays}, 0)}{\q{firstLbPerDay} \times \q{seasonDays}}`,
    { onlyWhen: isSurvey, says: 'The normal year, had the pounds been weighed on the other dryness.' },
  ),
  formula('eatenSoFarLb', tex`\q{herdLbPerDay} \times \q{goneDays}`, { says: 'Eaten since turn-in by the herd as it is now.' }),
  formula('leftLb', tex`\max(\q{thisLb} - \q{eatenSoFarLb}, 0)`, { says: 'Left, with what still grows.' }),
  formula('balanceLb', tex`\q{leftLb} - \q{herdLbPerDay} \times \q{leftDays}`, { says: 'Against what the herd needs until {toDay}.' }),
  formula('lastsDays', tex`\min(\frac{\q{leftLb}}{\q{herdLbPerDay}}, \q{leftDays})`, { says: 'How long it lasts if none go.' }),
  formula('forFirstLb', tex`\max(\q{leftLb} - \q{othersLbPerDay} \times \q{leftDays}, 0)`, {
    says: 'What is left for the first kind after the others have eaten to the end.',
  }),
  formula('nowHead', tex`\frac{\q{forFirstLb}}{\q{firstLbPerDay} \times \q{leftDays}}`, {
    says: 'Head that this carries from today.',
    source: 'umaine-pasture-lesson-5, equation 1',
  }),
  byCase('exactGoHead', {
    says: 'All of them eat until the day they go; those who stay must live on what is then left. Each day of waiting makes the number grow.',
    source: 'our own, forage shared out over the days',
    ways: [
      { when: ({ verdict }) => verdict === 'too-late', formula: tex`\q{firstHead}`, because: 'even all of them are not enough by that day' },
      {
        formula: tex`\max(\q{firstHead} - \frac{\q{forFirstLb} / \q{firstLbPerDay} - \q{firstHead} \times \q{waitDays}}{\q{leftDays} - \q{waitDays}}, 0)`,
      },
    ],
  }),
  lookup('goHead', { says: 'Rounded up to a whole animal.', source: 'common practice' }),
];
