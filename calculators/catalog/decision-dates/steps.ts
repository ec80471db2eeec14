import { choice, date, number, rows } from '../../kit/inputs.ts';

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
    day: date({ label: 'Date', belongsTo: 'management', default: '2026-07-01' }),
    // What one eats: common weights at the likely share of weight; it only starts the field.
    step: choice({
      label: 'If it is too dry by then',
      belongsTo: 'management',
      default: 'look',
      options: {
        look: { label: stepWords.look },
        'sell-yearlings': { label: stepWords['sell-yearlings'], fills: { eachLbPerDay: 16 } },
        'sell-open': { label: stepWords['sell-open'], fills: { eachLbPerDay: 26 } },
        'wean-early': { label: stepWords['wean-early'], fills: { eachLbPerDay: 10 } },
        'sell-sheep': { label: stepWords['sell-sheep'], fills: { eachLbPerDay: 3.5 } },
        'sell-pairs': { label: stepWords['sell-pairs'], fills: { eachLbPerDay: 36 } },
        'pull-off': { label: stepWords['pull-off'], fills: { eachLbPerDay: 31 } },
        'buy-hay': { label: stepWords['buy-hay'] },
      },
    }),
    leaveHead: number({
      label: 'How many',
      symbol: 'n',
      belongsTo: 'management',
      unit: 'head',
      min: 0,
      max: 20_000,
      usual: 'herdHead',
      default: 5,
      whole: true,
      shownWhen: { step: leaving },
      help: 'For weaning, the number of pairs. Count no animal twice.',
    }),
    eachLbPerDay: number({
      label: 'Each spares a day',
      symbol: 'e',
      belongsTo: 'management',
      unit: 'lb/d',
      min: 0,
      max: 100,
      default: 26,
      shownWhen: { step: leaving },
      help: 'Dry matter. Weaning spares what the calf grazed, and what the cow eats less once dry.',
    }),
    hayTon: number({
      label: 'Tons that they will eat',
      symbol: 'h',
      belongsTo: 'management',
      unit: 'ton',
      min: 0,
      max: 50_000,
      default: 10,
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
