import { choice, number, rows } from '../../kit/inputs.ts';
import { months } from '../../tables/months.ts';
import { breeding } from './guide.ts';
import { calfLabels, monthRuleLabels, stageWords, stockWords } from './words.ts';

const cattle = 'Cattle';
const small = 'Sheep and goats';
// Weights are common ones and only start the field.
const stock = choice({
  label: 'Kind of stock',
  belongsTo: 'place',
  help: 'Choosing one fills in a common weight; change it to fit yours.',
  default: 'cow',
  options: {
    cow: { label: stockWords.cow, group: cattle, fills: { weightLb: 1250 } },
    heifer: { label: stockWords.heifer, group: cattle, fills: { weightLb: 950 } },
    bull: { label: stockWords.bull, group: cattle, fills: { weightLb: 1900 } },
    growing: { label: stockWords.growing, group: cattle, fills: { weightLb: 600 } },
    calf: { label: stockWords.calf, group: cattle, fills: { weightLb: 300 } },
    ewe: { label: stockWords.ewe, group: small, fills: { weightLb: 160 } },
    lamb: { label: stockWords.lamb, group: small, fills: { weightLb: 80 } },
    doe: { label: stockWords.doe, group: small, fills: { weightLb: 120 } },
    horse: { label: stockWords.horse, group: 'Horses', fills: { weightLb: 1100 } },
  },
});

export const inputs = {
  stageFrom: choice({
    label: 'Dry, heavy or nursing',
    belongsTo: 'place',
    default: 'known',
    options: { known: { label: 'I know' }, 'birth-month': { label: 'Work it out from the month they calve or lamb' } },
  }),
  month: choice({
    label: 'Month that you ask about',
    belongsTo: 'place',
    default: 'jul',
    options: months,
    shownWhen: { stageFrom: 'birth-month' },
  }),
  intakeFrom: choice({
    label: 'What one eats',
    belongsTo: 'place',
    default: 'guide',
    help: 'As a share of its weight, counted with the water out.',
    options: { guide: { label: 'From the printed guides' }, own: { label: 'My own figures' } },
  }),
  quality: choice({
    label: 'Feed that they are on',
    belongsTo: 'place',
    default: 'fair',
    shownWhen: { intakeFrom: 'guide' },
    help: 'Only the cattle guides split it. Poor feed passes slowly, so cows eat less of it, not more.',
    ask: 'Take a handful. Stems that snap and no green is poor. Some green leaf is fair. Mostly green leaf is good.',
    field: 'A lab test says it best: digestible nutrients (TDN) under 52 % are poor, 52 to 59 % fair, over 59 % good.',
    options: {
      poor: { label: 'Poor: brown, stemmy, weathered' },
      fair: { label: 'Fair: some green leaf, or decent grass hay' },
      good: { label: 'Good: mostly green leaf' },
    },
  }),
  weightFrom: choice({
    label: 'The weights below are',
    belongsTo: 'place',
    default: 'weighed',
    options: { weighed: { label: 'from a scale or sale tickets' }, guessed: { label: 'guessed by eye' } },
  }),
  herd: rows({
    label: 'The herd',
    rowName: 'kind of stock',
    help: 'A line for each kind. Give calves that have begun to graze a line of their own.',
    maxRows: 10,
    columns: {
      stock,
      stage: choice({
        label: 'Stage',
        belongsTo: 'place',
        default: 'dry',
        options: { dry: { label: stageWords.dry }, late: { label: stageWords.late }, nursing: { label: stageWords.nursing } },
        shownWhen: { stageFrom: 'known', stock: breeding },
        ask: 'In which month do they calve or lamb? Choose “Work it out” above.',
      }),
      birthMonth: choice({
        label: 'Month in which most calve or lamb',
        belongsTo: 'place',
        default: 'mar',
        options: months,
        shownWhen: { stageFrom: 'birth-month', stock: breeding },
      }),
      countHead: number({
        label: 'Head',
        symbol: 'n',
        belongsTo: 'management',
        unit: 'head',
        min: 0,
        max: 20_000,
        usual: 'herdHead',
        default: 45,
        whole: true,
        help: 'This stands with the management, so that selling some can be set beside keeping all.',
      }),
      weightLb: number({
        label: 'Weight of one',
        symbol: 'W',
        belongsTo: 'place',
        unit: 'lb',
        min: 20,
        max: 3500,
        usual: 'animalLb',
        default: 1250,
        field: 'A scale, or a weigh tape round the heart girth.',
        ask: 'What did your last culls weigh on the sale tickets? Average three or more. Guesses run light.',
      }),
      ownPercent: number({
        label: 'Eats a day, share of its weight',
        symbol: 'p_o',
        belongsTo: 'place',
        unit: 'pct',
        min: 0.5,
        max: 8,
        default: 2.5,
        shownWhen: { intakeFrom: 'own' },
        help: 'With the water out. Most cattle eat 1.5 to 3 %, sheep 2 to 5 %.',
        field: 'On hay: weigh what goes in and what is left for a week, take off the water, divide by head, days and weight.',
      }),
    },
    default: [
      { stock: 'cow', stage: 'nursing', birthMonth: 'mar', countHead: 45, weightLb: 1250, ownPercent: 2.5 },
      { stock: 'calf', stage: 'dry', birthMonth: 'mar', countHead: 42, weightLb: 300, ownPercent: 1.5 },
      { stock: 'bull', stage: 'dry', birthMonth: 'mar', countHead: 2, weightLb: 1900, ownPercent: 2.2 },
      { stock: 'heifer', stage: 'dry', birthMonth: 'feb', countHead: 9, weightLb: 950, ownPercent: 2.2 },
      { stock: 'ewe', stage: 'dry', birthMonth: 'mar', countHead: 60, weightLb: 160, ownPercent: 2 },
    ],
  }),
  weightRule: choice({
    label: 'Animal units by weight',
    belongsTo: 'place',
    convention: true,
    default: 'linear',
    help: 'A 1,000-lb animal is one unit under both rules. They part as stock get heavier or lighter.',
    options: {
      linear: { label: 'Straight: weight over 1,000 lb' },
      metabolic: { label: 'Metabolic: that, to the power 0.75' },
    },
  }),
  calfRule: choice({
    label: 'Calves in animal units',
    belongsTo: 'place',
    convention: true,
    default: 'within',
    options: { within: { label: calfLabels.within }, 'by-weight': { label: calfLabels['by-weight'] }, fixed: { label: calfLabels.fixed } },
  }),
  monthRule: choice({
    label: 'Pounds in an animal-unit month',
    belongsTo: 'place',
    convention: true,
    default: 'lb-790',
    help: 'Nobody agrees. Ask which one your lease or your range plan means.',
    options: {
      'lb-600': { label: monthRuleLabels['lb-600'] },
      'lb-750': { label: monthRuleLabels['lb-750'] },
      'lb-780': { label: monthRuleLabels['lb-780'] },
      'lb-790': { label: monthRuleLabels['lb-790'] },
      'lb-870': { label: monthRuleLabels['lb-870'] },
      'lb-912': { label: monthRuleLabels['lb-912'] },
      'lb-915': { label: monthRuleLabels['lb-915'] },
    },
  }),
};
