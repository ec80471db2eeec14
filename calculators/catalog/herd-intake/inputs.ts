import { choice, number, rows } from '../../kit/inputs.ts';
import { breeding } from '../../math/herd/stageFromBirth.ts';
import { months } from '../../units/months.ts';
import { calfLabels, monthRuleLabels, stageWords, stockWords } from './quantities.ts';

const cattle = 'Cattle';
const small = 'Sheep and goats';
// Weights are common ones and only start the field.
const stock = choice('Kind of stock', 'cow', {
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
  help: 'Choosing one fills in a common weight; change it to fit yours.',
});

export const inputs = {
  stageFrom: choice('Dry, heavy or nursing', 'known', {
    options: { known: 'I know', 'birth-month': 'Work it out from the month they calve or lamb' },
  }),
  month: choice('Month that you ask about', 'jul', { options: months, occurs: 'today', shownWhen: { stageFrom: 'birth-month' } }),
  intakeFrom: choice('What one eats', 'guide', {
    options: { guide: 'From the printed guides', own: 'My own figures' },
    help: 'As a share of its weight, counted with the water out.',
  }),
  quality: choice('Feed that they are on', 'fair', {
    options: { poor: 'Poor: brown, stemmy, weathered', fair: 'Fair: some green leaf, or decent grass hay', good: 'Good: mostly green leaf' },
    shownWhen: { intakeFrom: 'guide' },
    help: 'Only the cattle guides split it. Poor feed passes slowly, so cows eat less of it, not more.',
    ask: 'Take a handful. Stems that snap and no green is poor. Some green leaf is fair. Mostly green leaf is good.',
    field: 'A lab test says it best: digestible nutrients (TDN) under 52 % are poor, 52 to 59 % fair, over 59 % good.',
  }),
  weightFrom: choice('The weights below are', 'weighed', { options: { weighed: 'from a scale or sale tickets', guessed: 'guessed by eye' } }),
  herd: rows({
    label: 'The herd',
    rowName: 'kind of stock',
    help: 'A line for each kind. Give calves that have begun to graze a line of their own.',
    maxRows: 10,
    columns: {
      stock,
      stage: choice('Stage', 'dry', {
        options: { dry: stageWords.dry, late: stageWords.late, nursing: stageWords.nursing },
        shownWhen: { stageFrom: 'known', stock: breeding },
        ask: 'In which month do they calve or lamb? Choose “Work it out” above.',
      }),
      birthMonth: choice('Month in which most calve or lamb', 'mar', { options: months, shownWhen: { stageFrom: 'birth-month', stock: breeding } }),
      countHead: number('Head', 'n', 'head', [0, 20_000], 45, {
        belongsTo: 'management',
        usual: 'herdHead',
        whole: true,
        help: 'This stands with the management, so that selling some can be set beside keeping all.',
      }),
      weightLb: number('Weight of one', 'W', 'lb', [20, 3500], 1250, {
        usual: 'animalLb',
        field: 'A scale, or a weigh tape around the heart girth.',
        ask: 'What did your last culls weigh on the sale tickets? Average three or more. Guesses run light.',
      }),
      ownPercent: number('Eats a day, share of its weight', 'p_o', 'pct', [0.5, 8], 2.5, {
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
  weightRule: choice('Animal units by weight', 'linear', {
    options: { linear: 'Straight: weight over 1,000 lb', metabolic: 'Metabolic: that, to the power 0.75' },
    convention: true,
    help: 'A 1,000-lb animal is one unit under both rules. They part as stock get heavier or lighter.',
  }),
  calfRule: choice('Calves in animal units', 'within', {
    options: { within: calfLabels.within, 'by-weight': calfLabels['by-weight'], fixed: calfLabels.fixed },
    convention: true,
  }),
  monthRule: choice('Pounds in an animal-unit month', 'lb-790', {
    options: {
      'lb-600': monthRuleLabels['lb-600'],
      'lb-750': monthRuleLabels['lb-750'],
      'lb-780': monthRuleLabels['lb-780'],
      'lb-790': monthRuleLabels['lb-790'],
      'lb-870': monthRuleLabels['lb-870'],
      'lb-912': monthRuleLabels['lb-912'],
      'lb-915': monthRuleLabels['lb-915'],
    },
    convention: true,
    help: 'Nobody agrees. Ask which one your lease or your range plan means.',
  }),
};
