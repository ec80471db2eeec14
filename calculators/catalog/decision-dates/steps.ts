import { choice, date, number, rows, type ValuesOf } from '../../kit/inputs.ts';
import { byCase, formula, lookup, type Step, tex } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;
type Values = ValuesOf<typeof inputs> & Results;
const isCounted = ({ rainFrom }: Values): boolean => rainFrom === 'record';

export const working: readonly Step<Values, Results>[] = [
  lookup('seasonNormalIn', {
    says: 'Rain from {sinceDay} to the last day of grazing in the middle year: half of all years had more.',
    source: 'hyndman-fan-1996, definition 6',
  }),
  lookup('normalSoFarIn', { says: 'The same until today.', source: 'hyndman-fan-1996, definition 6' }),
  byCase('soFarPercent', {
    says: 'This year’s rain against it.',
    ways: [
      { when: ({ normalSoFarIn }) => normalSoFarIn > 0, formula: tex`\frac{100 \times \q{rainSoFarIn}}{\q{normalSoFarIn}}` },
      { formula: '100', because: 'none is usual by today' },
    ],
  }),
  formula('soFarTriggerIn', tex`\frac{\q{normalSoFarIn} \times \q{triggerPercent}}{100}`, {
    says: 'Too dry by today.',
    source: 'ndmc-ranch-plan, target points',
  }),
  lookup('likeCaughtCount', {
    onlyWhen: isCounted,
    says: 'Of the {yearsCount} whole seasons, {likeCount} had no more rain by today. So many of them reached the normal season’s rain all the same.',
    source: 'clopper-pearson-1934, for the range of the share',
  }),
  byCase('dryPercent', {
    says: 'Grass of a season whose rain stays at the trigger.',
    source: 'wiles-2011, in a line up to the average and level above it; sneva-hyder-1962',
    ways: [
      { when: ({ response }) => response === 'proportion', formula: tex`\min(100, \q{triggerPercent})` },
      { formula: tex`\min(100, \max(0, 1.11 \times \q{triggerPercent} - 10.6))` },
    ],
  }),
  formula('dryShortDays', tex`\q{feedDays} (1 - \frac{\q{dryPercent}}{100})`, { says: 'Feed that such a season lacks.' }),
  {
    kind: 'rows',
    of: 'dates',
    says: 'By each date. The rain that is too little; what a caged spot has grown by then in such a season; the feed that must stand so that it lasts with what still grows; and what the year can still make if all of the rest is normal.',
    source: 'common practice',
    formulas: {
      triggerIn: tex`\frac{\q{normalIn} \times \q{triggerPercent}}{100}`,
      cageLbPerAc: tex`\frac{\q{grassLbPerAc} \times \q{grownPercent} \times \q{triggerPercent}}{100 \times 100}`,
      comesPercent: tex`\max(0, \q{endPercent} - \q{grownPercent})`,
      needDays: tex`\max(0, \q{leftDays} - \frac{\q{feedDays} \times \q{comesPercent} \times \q{dryPercent}}{100 \times 100})`,
      bestPercent: tex`100 - \frac{\q{grownPercent} (100 - \q{dryPercent})}{100}`,
      bestShortDays: tex`\q{feedDays} (1 - \frac{\q{bestPercent}}{100})`,
    },
  },
  formula('remainLbPerDay', tex`\q{herdLbPerDay} - \q{totalSaveLbPerDay}`, { says: 'What the stock that stay eat, once all steps are done.' }),
  {
    kind: 'rows',
    of: 'plan',
    says: 'Each step: pounds spared from its date to the last day of grazing, in days of feed for those that stay. A ton of hay is 2,000 lb, 85 % of it dry.',
    source: 'common practice',
    formulas: {
      saveLbPerDay: [
        { when: ({ step }) => isLeaving(step), formula: tex`\q{goHead} \times \q{spareLbPerDay}` },
        { formula: '0', because: 'no stock leave' },
      ],
      savedLb: [
        { when: ({ step }) => isLeaving(step), formula: tex`\q{saveLbPerDay} \times \q{planLeftDays}` },
        { when: ({ step }) => step === 'buy-hay', formula: tex`\q{boughtTon} \times 2000 \times 0.85` },
        { formula: '0', because: 'nothing is done' },
      ],
      gainDays: tex`\frac{\q{savedLb}}{\q{remainLbPerDay}}`,
      weekDays: tex`\frac{7 \times \q{saveLbPerDay}}{\q{remainLbPerDay}}`,
    },
    sums: { totalSaveLbPerDay: 'saveLbPerDay', gainedDays: 'gainDays', weekLostDays: 'weekDays' },
  },
  formula('stillShortDays', tex`\max(0, \q{dryShortDays} - \q{gainedDays})`, { says: 'What the steps leave uncovered.' }),
];

/** By common practice in this order: what eats most for the least loss goes first. */
export const stepWords = {
  look: 'Look and write down, nothing more',
  'sell-yearlings': 'Sell yearlings or stockers',
  'sell-open': 'Sell dry, open and late cows',
  'wean-early': 'Wean early and take the calves off',
  'sell-sheep': 'Sell ewes and lambs',
  'sell-pairs': 'Sell cows with their calves',
  'pull-off': 'Pull stock off to a pen, or to leased grass',
  'buy-hay': 'Buy hay',
} as const;
export type StepKind = keyof typeof stepWords;

const leaving = ['sell-yearlings', 'sell-open', 'wean-early', 'sell-sheep', 'sell-pairs', 'pull-off'] as const;
export const isLeaving = (step: StepKind): boolean => leaving.some((each) => each === step);

export const steps = rows({
  label: 'Dates and steps',
  rowName: 'date',
  help: 'One step for each date, the ones that cost you least first. Two weeks before the best month ends is a good first date.',
  maxRows: 8,
  columns: {
    day: date('Date', '2026-07-01', { belongsTo: 'management' }),
    // What one eats: common weights at the likely share of weight; it only starts the field.
    step: choice('If it is too dry by then', 'look', {
      options: {
        look: stepWords.look,
        'sell-yearlings': { label: stepWords['sell-yearlings'], fills: { eachLbPerDay: 16 } },
        'sell-open': { label: stepWords['sell-open'], fills: { eachLbPerDay: 26 } },
        'wean-early': { label: stepWords['wean-early'], fills: { eachLbPerDay: 10 } },
        'sell-sheep': { label: stepWords['sell-sheep'], fills: { eachLbPerDay: 3.5 } },
        'sell-pairs': { label: stepWords['sell-pairs'], fills: { eachLbPerDay: 36 } },
        'pull-off': { label: stepWords['pull-off'], fills: { eachLbPerDay: 31 } },
        'buy-hay': stepWords['buy-hay'],
      },
      belongsTo: 'management',
    }),
    leaveHead: number('How many', 'n', 'head', [0, 20_000], 5, {
      belongsTo: 'management',
      usual: 'herdHead',
      whole: true,
      shownWhen: { step: leaving },
      help: 'For weaning, the number of pairs. Count no animal twice.',
    }),
    eachLbPerDay: number('Each spares a day', 'e', 'lb/d', [0, 100], 26, {
      belongsTo: 'management',
      shownWhen: { step: leaving },
      help: 'Dry matter. Weaning spares what the calf grazed, and what the cow eats less once dry.',
    }),
    hayTon: number('Tons that they will eat', 'h', 'ton', [0, 50_000], 10, {
      belongsTo: 'management',
      shownWhen: { step: 'buy-hay' },
      help: 'After what storing and feeding lose, with 15 % water.',
    }),
  },
  default: [
    { day: '2026-05-15', step: 'look', leaveHead: 5, eachLbPerDay: 26, hayTon: 10 },
    { day: '2026-06-15', step: 'sell-open', leaveHead: 5, eachLbPerDay: 26, hayTon: 10 },
    { day: '2026-07-10', step: 'wean-early', leaveHead: 38, eachLbPerDay: 10, hayTon: 10 },
    { day: '2026-08-01', step: 'sell-sheep', leaveHead: 30, eachLbPerDay: 3.5, hayTon: 10 },
    { day: '2026-08-15', step: 'buy-hay', leaveHead: 5, eachLbPerDay: 26, hayTon: 10 },
  ],
});
