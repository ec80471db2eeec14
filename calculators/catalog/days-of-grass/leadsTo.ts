import { atWater, onHay } from '../../asks/otherStock.ts';
import { leading } from '../../kit/leads.ts';
import { yearOf } from '../../units/days.ts';
import { isShort, runsOut, type Values } from './steps.ts';

const isCow = ({ mainKind }: Values): boolean => mainKind === 'cow-nursing' || mainKind === 'cow-dry' || mainKind === 'heifer';
/** That form is led to with its example's growth, March to October: within a calendar year its dates are of one growth. Its herd is a herd. */
const canPlan = ({ lowOffDay, todayDay, untilDay, demandLbPerDay }: Values): boolean =>
  yearOf(untilDay) === yearOf(todayDay) && lowOffDay < untilDay && demandLbPerDay >= 10 && demandLbPerDay <= 1_000_000;

export const leadsTo = leading<Values>([
  {
    calculator: 'hay-to-grass',
    says: 'Hay to bridge the gap',
    when: (values) => runsOut(values) || values.verdict === 'nothing',
    gives: { from: 'lowOffDay' },
    // Nobody has said whether there is hay, and the example's would not fit the dates. A place puts its own in, and its births: `src/place/offer/ledTo.ts`.
    asks: ['to', 'on-hand'],
    rows: {
      of: 'stock',
      into: 'herd',
      words: { into: 'stock', of: 'kind', as: onHay, nearestBy: 'weightLb' },
      columns: { count: 'countHead', weight: 'weightLb', intake: 'intakePercent' },
      tells: { births: { bull: 'no', stocker: 'no', calf: 'no' } },
    },
  },
  {
    calculator: 'feed-or-sell',
    says: 'Sell, or feed and keep',
    when: (values) => isCow(values) && isShort(values),
    gives: { herd: 'mainHead', sell: 'sellHead' },
  },
  {
    calculator: 'decision-dates',
    says: 'Dates to decide by',
    when: (values) => isShort(values) && canPlan(values),
    gives: { today: 'todayDay', end: 'untilDay', herd: 'demandLbPerDay', 'steps.day': 'lowOffDay' },
    sets: { 'steps.step': 'look' },
  },
  {
    calculator: 'stock-water',
    says: 'Does the water last as long?',
    rows: { of: 'stock', into: 'herd', words: { into: 'stock', of: 'kind', as: atWater, nearestBy: 'weightLb' }, columns: { count: 'countHead' } },
  },
  { guide: 'pulling-stock-early', says: 'Why to pull them early, and where they go' },
]);
