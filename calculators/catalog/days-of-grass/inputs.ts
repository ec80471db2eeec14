import { isSouth } from '../../asks/south.ts';
import { conditionOptions, standOptions } from '../../asks/stand.ts';
import { grazingStock, stockKind } from '../../asks/stock.ts';
import { choice, date, number } from '../../kit/inputs.ts';

export const kinds = ['cow-nursing', 'cow-dry', 'bull', 'heifer', 'stocker', 'calf', 'ewe-nursing', 'ewe-dry', 'doe', 'doe-dry', 'horse'] as const;

const stock = grazingStock({
  label: 'Stock on this grass',
  kind: stockKind('cow-nursing', kinds),
  ask: 'Average the weights on your cull tickets. Guesses by eye run light.',
  start: 'cow-nursing',
  countLabel: 'Head on this grass',
  herd: [['cow-nursing', 40]],
});

const byList = { densityFrom: 'list' };

export const inputs = {
  areaAc: number('Ground they still have', 'A', 'ac', [0.1, 100_000], 40, {
    step: 5,
    usual: 'pastureAc',
    offeredBy: 'pastures.area',
    help: 'Only what they will still graze before that day.',
  }),
  heightIn: number('How tall it stands now', 'H', 'in', [0, 80], 7, {
    step: 0.5,
    usual: 'swardIn',
    field: 'Set a stick on the soil in twenty places and read where most leaves end, seed heads left out. Take bare spots as they come.',
    ask: 'Does it come over the top of your boot? A fist on the ground is about 4 inches (100 mm). Twenty spots with a stick are better.',
  }),
  stopHeightIn: number('How short you leave it', 'h', 'in', [0.5, 40], 3.5, {
    step: 0.5,
    belongsTo: 'management',
    usual: 'stubbleIn',
    offeredBy: 'pastures.stopHeight',
    ask: 'On sod pasture 3 to 4 inches (75 to 100 mm); on tall native grass 8 (200 mm) or more. In a drought leave more, not less.',
  }),
  stock,
  untilDay: date('Day to which it must last', '2026-08-30', {
    occurs: { daysAfterToday: 60 },
    offeredBy: 'season.end',
    help: 'The day when there is other grass, or when hay was to begin.',
    ask: 'Which pasture comes next, and when will it be ready? If you cannot count on rain, take the day when you would feed in any year.',
  }),
  todayDay: date('Today', '2026-07-01', { occurs: 'today' }),
  isSouth,
  densityFrom: choice('Pounds in an inch of height', 'list', {
    offeredBy: 'pastures.densityFrom',
    options: {
      list: { label: 'From a printed list, by what grows there', short: 'by a printed list' },
      own: { label: 'I have clipped, and know mine', short: 'by my own clips' },
    },
  }),
  stand: choice('What grows there', 'mixed-pasture', {
    options: standOptions,
    shownWhen: byList,
    offeredBy: 'pastures.stand',
    help: 'Nothing here fits native range by height alone: clip it.',
  }),
  condition: choice('Look straight down: how thick is it', 'good', { options: conditionOptions, shownWhen: byList, offeredBy: 'pastures.condition' }),
  densityLbPerAcIn: number('Your pounds in an inch', 'd_k', 'lb/ac/in', [20, 1000], 250, {
    usual: 'swardLbPerAcIn',
    shownWhen: { densityFrom: 'own' },
    offeredBy: 'pastures.density',
    help: 'With the water out. Printed figures run from 50 to 400 lb/ac an inch (22 to 177 kg/ha a cm).',
    ask: 'Three clips set the stick: see “Forage on hand”.',
  }),
  reachPercent: number('Share of the ground that they use', 'r', 'pct', [1, 100], 100, {
    step: 5,
    offeredBy: 'pastures.reach',
    help: 'Less where water is far, the slope is steep or brush is thick.',
  }),
  growthLbPerAcDay: number('What it still grows in a day', 'g', 'lb/ac/d', [0, 300], 0, {
    usual: 'growthLbPerAcDay',
    help: 'In a drought put 0, and take any rain as a gift.',
    ask: 'Has it grown since last week? Where an inch holds 275 lb/ac, an inch (25 mm) in a week is about 40 lb/ac a day (45 kg/ha a day). If you cannot see it, it is 0.',
  }),
  eatenFrom: choice('How long they stay in one pasture', 'until-gone', {
    options: {
      'until-gone': { label: 'They stay in it until it is gone', short: 'stay until it is gone' },
      week: { label: 'They are moved within seven days', short: 'moved within a week' },
      own: { label: 'I know the share that they eat', short: 'share eaten known' },
    },
    belongsTo: 'management',
    offeredBy: 'grazing.eaten',
    help: 'The longer they stay the more they trample and pass over. The stubble is already left out, so don’t halve it again.',
  }),
  ownEatenPercent: number('Share eaten of what stands above the stubble', 'u_o', 'pct', [5, 100], 60, {
    belongsTo: 'management',
    shownWhen: { eatenFrom: 'own' },
  }),
  canGoHead: number('Head that could leave', 'c', 'head', [0, 20_000], 10, {
    belongsTo: 'management',
    usual: 'herdHead',
    whole: true,
    help: 'Of the kind that eats most: sold, weaned off, or sent to other grass.',
    ask: 'Open, old, late or unsound ones first. How many are there?',
  }),
};
