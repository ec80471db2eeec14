import { choice, date, months, number } from '../../kit/inputs.ts';
import { record } from '../../kit/record/record.ts';
import { months as monthOptions } from '../../tables/months.ts';
import { demoRain } from './demoRain.ts';
import { steps } from './steps.ts';

const answers = { curve: 'answers' };

export const inputs = {
  todayDay: date('Today', '2026-06-01'),
  endDay: date('Day until which the grass must last', '2026-10-31', { help: 'In the same calendar year.' }),
  curve: choice('When the grass grows', 'answers', {
    options: {
      answers: 'Four answers of my own',
      nd0002: 'Cool-season grass, North Dakota',
      'smooth-brome-kansas': 'Smooth brome with nitrogen, northeast Kansas',
      co6707: 'Warm-season grass, eastern Colorado',
      'mlra69-fine-a': 'Mixed warm and cool season, southeastern Colorado',
    },
    help: 'A curve printed for your own county comes before any of these.',
  }),
  startMonth: choice('Month in which growth starts', 'mar', { options: monthOptions, shownWhen: answers }),
  bestMonth: choice('Best month', 'may', { options: monthOptions, shownWhen: answers }),
  quitMonth: choice('Month it quits', 'oct', { options: monthOptions, shownWhen: answers }),
  fallFlush: choice('Comes back in the fall', 'some', {
    options: { none: 'No', some: 'Some, about a tenth of the year', much: 'Much, about a third of the year' },
    shownWhen: answers,
  }),
  grassLbPerAc: number('Grass that a normal year grows', 'Y', 'lb/ac', [100, 20_000], 2400, {
    usual: 'forageLbPerAc',
    ask: 'The soil survey prints it by soil, for a favorable, a normal and an unfavorable year.',
    help: 'Only for what a caged spot should show.',
  }),
  feedDays: number('Days that it feeds this herd, in a normal year', 'F', 'd', [10, 366], 185, {
    ask: 'Turn-in to the day you began to feed hay, in a year that came out right.',
  }),
  herdLbPerDay: number('The herd eats a day', 'D', 'lb/d', [10, 1_000_000], 1955, {
    help: 'With the water out. See “Daily dry-matter intake” for yours.',
    ask: 'Add up the weights of all grown stock and take a fortieth of it, 2.5 %.',
  }),
  rainFrom: choice('What is a normal rain here', 'record', {
    options: { record: 'From a rain record', station: 'No record: twelve medians of the nearest station' },
  }),
  rainRecord: record({
    label: 'Rain record',
    belongsTo: 'place',
    unit: 'in',
    min: 0,
    max: 60,
    maxRows: 40_000,
    default: demoRain,
    help: 'A day and its rain on each line, or a year and its twelve months. Left empty, the demo place stands in.',
    standIn: 'The rain is that of the invented demo place, not yours. Put your own record in before you use a date from here.',
    shownWhen: { rainFrom: 'record' },
    ask: 'No notebook? Choose the medians of the nearest station, above. They give the triggers; they can’t count years.',
  }),
  stationIn: months('Median rain of the month', 'm', 'in', [0, 40], [2.4, 2.4, 3.2, 3.6, 4.9, 4.2, 2.6, 2.1, 2.9, 2.7, 3.1, 2.4], {
    help: 'Medians, not means: a few floods lift a mean.',
    shownWhen: { rainFrom: 'station' },
  }),
  sinceMonth: choice('Count rain from the first of', 'mar', {
    options: monthOptions,
    help: 'The month in which growth starts, or one or two before where snow and winter rain fill the soil. A month later than your first date is that of last year.',
  }),
  rainSoFarIn: number('Rain from then until today', 'P', 'in', [0, 120], 7.9),
  response: choice('Grass goes with rain', 'proportion', {
    options: { proportion: 'in proportion, as in the Plains', 'great-basin': 'by the line of the Great Basin' },
    convention: true,
    help: 'Never over a normal year: past that, more rain gives little more.',
  }),
  triggerPercent: number('Rain that is too little', 'x', 'pct', [30, 100], 75, {
    belongsTo: 'management',
    help: 'Of normal by the date. 75 % is a common target. A lower one waits longer and gains less.',
  }),
  steps,
};
