import type { ValuesOf } from '../../kit/inputs.ts';
import { byCase, formula, lookup, tabulate, tex, type Working } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import { type inputs, isLeaving } from './inputs.ts';

type Results = ReturnType<typeof compute>;
type Values = ValuesOf<typeof inputs> & Results;
const isCounted = ({ rainFrom }: Values): boolean => rainFrom === 'record';

export const working: Working<Values, Results> = [
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
    onlyWhen: (values) => isCounted(values) && values.rainSays !== 'not-begun',
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
  tabulate('dates', {
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
  }),
  formula('remainLbPerDay', tex`\q{herdLbPerDay} - \q{totalSaveLbPerDay}`, { says: 'What the stock that stay eat, once all steps are done.' }),
  tabulate('plan', {
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
  }),
  formula('stillShortDays', tex`\max(0, \q{dryShortDays} - \q{gainedDays})`, { says: 'What the steps leave uncovered.' }),
];
