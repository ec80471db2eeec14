import { choice, number, rows } from '../../kit/inputs.ts';
import { guidePercents } from '../../math/herd/guidePercents.ts';
import { breeding } from '../../math/herd/stageFromBirth.ts';
import { months } from '../../units/months.ts';
import { calfLabels, monthRuleLabels, stageWords, stockWords } from './quantities.ts';

const cattle = 'Cattle';
const small = 'Sheep and goats';
// Weights are common ones and only start the field.
const stock = choice('Kind of stock', 'cow', {
  options: {
    cow: { label: stockWords.cow, short: ['cow', 'cows'], group: cattle, fills: { weightLb: 1250 } },
    heifer: { label: stockWords.heifer, short: ['heifer', 'heifers'], group: cattle, fills: { weightLb: 950 } },
    bull: { label: stockWords.bull, short: ['bull', 'bulls'], group: cattle, fills: { weightLb: 1900 } },
    growing: { label: stockWords.growing, short: ['stocker', 'stockers'], group: cattle, fills: { weightLb: 600 } },
    calf: { label: stockWords.calf, short: ['calf', 'calves'], group: cattle, fills: { weightLb: 300 } },
    ewe: { label: stockWords.ewe, short: ['ewe', 'ewes'], group: small, fills: { weightLb: 160 } },
    lamb: { label: stockWords.lamb, short: ['lamb', 'lambs'], group: small, fills: { weightLb: 80 } },
    doe: { label: stockWords.doe, short: ['doe', 'does'], group: small, fills: { weightLb: 120 } },
    horse: { label: stockWords.horse, short: ['horse', 'horses'], group: 'Horses, donkeys, mules', fills: { weightLb: 1100 } },
  },
  help: 'Choosing one fills in a common weight; change it to fit yours.',
  offeredBy: 'herd.kind',
});

export const inputs = {
  stageFrom: choice('Dry, heavy or nursing', 'known', {
    options: {
      known: { label: 'I know', short: 'stages as given' },
      'birth-month': { label: 'Work it out from the month they calve or lamb', short: 'stages by birth month' },
    },
    offeredBy: 'herd.stageFrom',
  }),
  month: choice('Month that you ask about', 'jul', { options: months, occurs: 'today', shownWhen: { stageFrom: 'birth-month' } }),
  intakeFrom: choice('What one eats', 'guide', {
    options: {
      guide: { label: 'From the printed guides', short: 'appetite by the guides' },
      own: { label: 'My own figures', short: 'own figures for appetite' },
    },
    help: 'As a share of its weight, counted with the water out.',
    offeredBy: 'herd.intakeFrom',
  }),
  quality: choice('Feed that they are on', 'fair', {
    options: { poor: 'Poor: brown, stemmy, weathered', fair: 'Fair: some green leaf, or decent grass hay', good: 'Good: mostly green leaf' },
    shownWhen: { intakeFrom: 'guide' },
    help: 'Only the cattle guides split it. Poor feed passes slowly, so cows eat less of it, not more.',
    ask: 'Take a handful. Stems that snap and no green is poor. Some green leaf is fair. Mostly green leaf is good.',
    field: 'A lab test says it best: digestible nutrients (TDN) under 52 % are poor, 52 to 59 % fair, over 59 % good.',
  }),
  weightFrom: choice('The weights below are', 'weighed', {
    options: {
      weighed: { label: 'from a scale or sale tickets', short: 'weights from a scale' },
      guessed: { label: 'guessed by eye', short: 'weights by eye' },
    },
  }),
  herd: rows({
    label: 'The herd',
    rowName: 'kind of stock',
    each: '{#countHead} {stock} of {weightLb}',
    help: 'A line for each kind. Give calves that have begun to graze a line of their own.',
    maxRows: 10,
    columns: {
      stock,
      stage: choice('Stage', 'dry', {
        options: { dry: stageWords.dry, late: stageWords.late, nursing: stageWords.nursing },
        shownWhen: { stageFrom: 'known', stock: breeding },
        ask: 'In which month do they calve or lamb? Choose “Work it out” above.',
        offeredBy: 'herd.stage',
      }),
      birthMonth: choice('Month in which most calve or lamb', 'mar', {
        options: months,
        shownWhen: { stageFrom: 'birth-month', stock: breeding },
        offeredBy: 'herd.birthMonth',
      }),
      countHead: number('Head', 'n', 'head', [0, 20_000], 45, {
        belongsTo: 'management',
        usual: 'herdHead',
        whole: true,
        help: 'This stands with the management, so that selling some can be set beside keeping all.',
        offeredBy: 'herd.count',
      }),
      weightLb: number('Weight of one', 'W', 'lb', [20, 3500], 1250, {
        step: 10,
        usual: 'animalLb',
        field: 'A scale, or a weigh tape around the heart girth.',
        ask: 'What did your last culls weigh on the sale tickets? Average three or more. Guesses run light.',
        offeredBy: 'herd.weight',
      }),
      ownPercent: number('Eats a day, share of its weight', 'p_o', 'pct', [0.5, 8], 2.5, {
        shownWhen: { intakeFrom: 'own' },
        help: 'With the water out. Most cattle eat 1.5 to 3 %, sheep 2 to 5 %.',
        field: 'On hay: weigh what goes in and what is left for a week, take off the water, divide by head, days and weight.',
        offeredBy: 'herd.intake',
      }),
    },
    default: [
      { stock: 'cow', stage: 'nursing', birthMonth: 'mar', countHead: 45, weightLb: 1250, ownPercent: 2.5 },
      { stock: 'calf', stage: 'dry', birthMonth: 'mar', countHead: 42, weightLb: 300, ownPercent: 1.5 },
      {
        stock: 'bull',
        stage: 'dry',
        birthMonth: 'mar',
        countHead: 2,
        weightLb: 1900,
        ownPercent: guidePercents('bull', 'dry', 'fair').likelyPercent,
      },
      { stock: 'heifer', stage: 'dry', birthMonth: 'feb', countHead: 9, weightLb: 950, ownPercent: 2.2 },
      { stock: 'ewe', stage: 'dry', birthMonth: 'mar', countHead: 60, weightLb: 160, ownPercent: 2 },
    ],
    offeredBy: 'herd',
  }),
  weightRule: choice('Animal units by weight', 'linear', {
    options: {
      linear: { label: 'Straight: weight over 1,000 lb', short: 'units by weight' },
      metabolic: { label: 'Metabolic: that, to the power 0.75', short: 'metabolic units' },
    },
    convention: true,
    help: 'A 1,000-lb animal is one unit under both rules. They part as stock get heavier or lighter.',
  }),
  calfRule: choice('Calves in animal units', 'within', {
    options: {
      within: { label: calfLabels.within, short: 'calves left out' },
      'by-weight': { label: calfLabels['by-weight'], short: 'calves by weight' },
      fixed: { label: calfLabels.fixed, short: 'calves 0.3 each' },
    },
    convention: true,
  }),
  monthRule: choice('Pounds in an animal-unit month', 'lb-790', {
    options: {
      'lb-600': { label: monthRuleLabels['lb-600'], short: '600 lb a month', shortMetric: '272 kg a month' },
      'lb-750': { label: monthRuleLabels['lb-750'], short: '750 lb a month', shortMetric: '340 kg a month' },
      'lb-780': { label: monthRuleLabels['lb-780'], short: '780 lb a month', shortMetric: '354 kg a month' },
      'lb-790': { label: monthRuleLabels['lb-790'], short: '790 lb a month', shortMetric: '358 kg a month' },
      'lb-870': { label: monthRuleLabels['lb-870'], short: '870 lb a month', shortMetric: '395 kg a month' },
      'lb-912': { label: monthRuleLabels['lb-912'], short: '912 lb a month', shortMetric: '414 kg a month' },
      'lb-915': { label: monthRuleLabels['lb-915'], short: '915 lb a month', shortMetric: '415 kg a month' },
    },
    convention: true,
    help: 'Nobody agrees. Ask which one your lease or your range plan means.',
  }),
};
