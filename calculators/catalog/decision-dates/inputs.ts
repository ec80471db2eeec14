import { growthCurve } from '../../asks/growthCurve.ts';
import { rainGauge } from '../../asks/rainGauge.ts';
import { choice, date, months, number, rows } from '../../kit/inputs.ts';
import { record } from '../../kit/record/record.ts';
import { months as monthOptions } from '../../units/months.ts';

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
  each: '{step} {day}',
  help: 'One step for each date, the ones that cost you least first. Two weeks before the best month ends is a good first date.',
  maxRows: 8,
  columns: {
    day: date('Date', '2026-07-01', { occurs: { before: 'endDay', built: '2026-10-31' }, belongsTo: 'management' }),
    // What one eats: common weights at the likely share of weight; it only starts the field.
    step: choice('If it is too dry by then', 'look', {
      options: {
        look: { label: stepWords.look, short: 'look' },
        'sell-yearlings': { label: stepWords['sell-yearlings'], short: 'sell yearlings', fills: { eachLbPerDay: 16 } },
        'sell-open': { label: stepWords['sell-open'], short: 'sell open cows', fills: { eachLbPerDay: 26 } },
        'wean-early': { label: stepWords['wean-early'], short: 'wean early', fills: { eachLbPerDay: 10 } },
        'sell-sheep': { label: stepWords['sell-sheep'], short: 'sell sheep', fills: { eachLbPerDay: 6.4 } },
        'sell-pairs': { label: stepWords['sell-pairs'], short: 'sell pairs', fills: { eachLbPerDay: 36 } },
        'pull-off': { label: stepWords['pull-off'], short: 'pull stock off', fills: { eachLbPerDay: 31 } },
        'buy-hay': { label: stepWords['buy-hay'], short: 'buy hay' },
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
      help: 'Dry matter. A ewe with lambs eats twice what a dry one does. Weaning spares what the calf grazed, and what the cow eats less once dry.',
    }),
    hayTon: number('Hay that they will eat', 'h', 'ton', [0, 50_000], 10, {
      belongsTo: 'management',
      shownWhen: { step: 'buy-hay' },
      help: 'After what storing and feeding lose, with 15 % water.',
    }),
  },
  default: [
    { day: '2026-05-15', step: 'look', leaveHead: 5, eachLbPerDay: 26, hayTon: 10 },
    { day: '2026-06-15', step: 'sell-open', leaveHead: 5, eachLbPerDay: 26, hayTon: 10 },
    { day: '2026-07-10', step: 'wean-early', leaveHead: 38, eachLbPerDay: 10, hayTon: 10 },
    { day: '2026-08-01', step: 'sell-sheep', leaveHead: 30, eachLbPerDay: 6.4, hayTon: 10 },
    { day: '2026-08-15', step: 'buy-hay', leaveHead: 5, eachLbPerDay: 26, hayTon: 10 },
  ],
});

/**
 * Rain of the demo place by month, inches, January first: the totals of its invented record. A year and its twelve months on a line, as a notebook may
 * have them.
 */
export const demoRain = `Year, Jan, Feb, Mar, Apr, May, Jun, Jul, Aug, Sep, Oct, Nov, Dec
1996, 2.63, 2.44, 2.29, 3.55, 5.43, 6.05, 4.49, 2.38, 3.36, 3.07, 2.37, 3.34
1997, 1.02, 2.34, 3.74, 7.95, 4.00, 10.19, 1.97, 1.70, 3.60, 2.67, 4.85, 1.39
1998, 2.42, 3.72, 5.05, 4.20, 2.05, 3.17, 1.30, 1.72, 0.73, 1.88, 1.93, 3.94
1999, 1.94, 1.33, 1.45, 1.54, 4.72, 4.75, 3.47, 1.61, 2.87, 2.36, 0.05, 1.68
2000, 4.42, 2.99, 2.29, 5.29, 5.72, 5.36, 3.86, 4.71, 4.50, 0.05, 1.60, 2.42
2001, 4.04, 3.01, 3.91, 3.75, 9.46, 5.71, 2.58, 1.92, 3.68, 4.24, 1.67, 1.91
2002, 1.21, 3.11, 5.04, 4.07, 6.92, 9.53, 1.35, 6.27, 3.10, 1.53, 3.97, 2.75
2003, 1.73, 1.78, 4.11, 2.05, 4.89, 10.22, 4.99, 0.88, 3.15, 5.80, 2.25, 3.49
2004, 2.14, 0.37, 3.21, 1.74, 3.92, 6.33, 3.79, 3.83, 5.27, 3.28, 6.52, 2.03
2005, 2.59, 4.18, 2.89, 2.72, 4.36, 5.59, 0.67, 1.05, 0.71, 3.22, 3.03, 2.63
2006, 1.44, 3.46, 4.42, 0.71, 8.01, 1.70, 2.09, 2.61, 0.87, 2.37, 3.38, 4.22
2007, 2.71, 3.30, 0.30, 1.85, 5.41, 3.86, 0.94, 0.43, 0.65, 2.14, 3.88, 2.09
2008, 2.38, 2.96, 3.67, 3.13, 2.13, 6.34, 2.37, 4.40, 0.22, 2.70, 3.20, 1.58
2009, 4.96, 1.26, 4.33, 5.46, 3.76, 4.10, 3.65, 2.42, 2.23, 2.16, 3.28, 2.64
2010, 1.59, 3.06, 2.52, 5.87, 4.49, 3.03, 5.00, 3.85, 2.70, 3.00, 5.46, 5.33
2011, 2.97, 0.54, 4.67, 5.75, 5.86, 3.43, 3.60, 0.75, 1.18, 4.11, 6.68, 3.21
2012, 3.66, 1.65, 4.93, 3.10, 3.82, 3.85, 6.87, 1.42, 4.58, 1.04, 2.35, 2.02
2013, 1.17, 2.45, 5.84, 3.69, 5.09, 3.43, 2.00, 4.57, 4.47, 1.42, 1.50, 1.15
2014, 0.28, 1.81, 2.03, 3.78, 7.24, 3.09, 2.06, 2.48, 7.79, 2.97, 3.14, 1.60
2015, 1.97, 2.16, 1.61, 0.87, 5.70, 2.42, 2.70, 3.14, 2.08, 2.76, 2.45, 1.50
2016, 3.51, 4.05, 2.84, 3.63, 5.56, 5.86, 2.86, 0.52, 2.44, 4.64, 3.06, 2.12
2017, 3.69, 3.13, 3.21, 2.37, 6.80, 3.26, 1.58, 1.53, 1.12, 1.87, 2.42, 2.30
2018, 4.28, 1.15, 3.49, 4.54, 8.02, 8.39, 2.63, 1.90, 2.88, 6.38, 1.88, 1.72
2019, 1.69, 0.73, 3.38, 2.55, 4.83, 6.43, 5.00, 1.44, 5.22, 0.54, 3.81, 2.70
2020, 3.01, 1.45, 1.69, 4.61, 4.63, 4.20, 1.41, 4.31, 3.00, 1.26, 4.82, 1.50
2021, 6.52, 2.37, 3.24, 3.25, 3.51, 4.40, 1.67, 2.69, 1.30, 1.01, 2.64, 3.24
2022, 2.44, 1.03, 1.60, 2.03, 6.21, 2.87, 2.05, 5.54, 1.29, 5.02, 4.76, 1.26
2023, 0.75, 3.54, 3.41, 4.77, 3.72, 4.06, 2.90, 1.42, 5.42, 3.95, 6.25, 4.29
2024, 0.47, 0.43, 0.67, 3.25, 2.37, 3.99, 1.48, 2.30, 3.65, 1.72, 3.10, 3.84
2025, 1.79, 0.94, 2.47, 4.83, 3.54, 2.60, 3.01, 0.73, 1.73, 7.08, 1.97, 2.90`;

export const inputs = {
  todayDay: date('Today', '2026-06-01', { occurs: 'today' }),
  endDay: date('Day until which the grass must last', '2026-10-31', {
    occurs: { nextFrom: 'today' },
    help: 'Within 12 months of today. It may lie past New Year.',
    offeredBy: 'season.end',
  }),
  ...growthCurve('Month it quits'),
  grassLbPerAc: number('Grass that a normal year grows', 'Y', 'lb/ac', [100, 20_000], 2400, {
    usual: 'forageLbPerAc',
    ask: 'The soil survey prints it by soil, for a favorable, a normal and an unfavorable year.',
    help: 'Only for what a caged spot should show.',
    offeredBy: 'pastures.normal',
  }),
  feedDays: number('Days that it feeds this herd, in a normal year', 'F', 'd', [10, 366], 185, {
    step: 5,
    ask: 'Turn-in to the day you began to feed hay, in a year that came out right.',
    offeredBy: 'season.grassDays',
  }),
  herdLbPerDay: number('The herd eats a day', 'D', 'lb/d', [10, 1_000_000], 1955, {
    help: 'With the water out. See “Dry matter intake of a herd” for yours.',
    ask: 'Add up the weights of all grown stock and take a fortieth of it, 2.5 %.',
    offeredBy: 'herd.seasonDemand',
  }),
  rainFrom: choice('What is a normal rain here', 'record', {
    options: { record: 'From a rain record', station: 'No record: twelve medians of the nearest station' },
    offeredBy: 'rain.from',
  }),
  rainRecord: record({
    ...rainGauge,
    maxRows: 40_000,
    default: demoRain,
    help: 'A day and its rain on each line, or a year and its twelve months. Left empty, the demo place stands in.',
    standIn: 'The rain is that of the invented demo place, not yours. Put your own record in before you use a date from here.',
    shownWhen: { rainFrom: 'record' },
    ask: 'No notebook? Choose the medians of the nearest station, above. They give the triggers; they can’t count years.',
    offeredBy: 'rain.record',
  }),
  stationIn: months('Median rain of the month', 'm', 'in', [0, 40], [2.4, 2.4, 3.2, 3.6, 4.9, 4.2, 2.6, 2.1, 2.9, 2.7, 3.1, 2.4], {
    help: 'Medians, not means: a few floods lift a mean.',
    shownWhen: { rainFrom: 'station' },
    offeredBy: 'rain.station',
  }),
  sinceMonth: choice('Count rain from the first of', 'mar', {
    options: monthOptions,
    offeredBy: 'rain.since',
    help: 'The month in which growth starts, or one or two before where snow and winter rain fill the soil. A month later than your first date is that of last year.',
  }),
  rainSoFarIn: number('Rain from then until today', 'P', 'in', [0, 120], 7.9, {
    step: 0.25,
    offeredBy: 'rain.soFar',
    help: 'Before that day comes, none of it counts.',
  }),
  response: choice('Grass goes with rain', 'proportion', {
    options: {
      proportion: { label: 'in proportion, as in the Plains', short: 'in proportion' },
      'great-basin': { label: 'by the line of the Great Basin', short: 'by the Great Basin line' },
    },
    convention: true,
    help: 'Never over a normal year: past that, more rain gives little more.',
  }),
  triggerPercent: number('Rain that is too little', 'x', 'pct', [30, 100], 75, {
    step: 5,
    belongsTo: 'management',
    help: 'Of normal by the date. 75 % is a common target. A lower one waits longer and gains less.',
  }),
  steps,
};
