import { whyAppetiteRange } from '../../asks/appetiteRange.ts';
import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shown, shownWhen } from '../../kit/shown.ts';
import { byCase, formula, lookup, tabulate, tex } from '../../kit/steps.ts';
import { compute } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';

type Kind = ReturnType<typeof compute>['kinds'][number];
/** Do mothers of these kinds nurse, while no line is for their young? */
const lacksYoung = (kinds: readonly Kind[], mothers: readonly Kind['stock'][], young: Kind['stock']): boolean =>
  kinds.some(({ stock, stage }) => mothers.includes(stock) && stage === 'nursing') && !kinds.some(({ stock }) => stock === young);

type Eaten = Pick<ReturnType<typeof compute>, 'kinds' | 'cattleLbPerDay' | 'horsesLbPerDay'>;
const has = ({ kinds }: Eaten, kind: Kind['stock']): boolean => kinds.some(({ stock, countHead }) => stock === kind && countHead > 0);
/** Growing lambs with does are taken for kids, which have no line of their own. */
const hasSheep = (eaten: Eaten): boolean => has(eaten, 'ewe') || (has(eaten, 'lamb') && !has(eaten, 'doe'));
const hasLarge = ({ cattleLbPerDay, horsesLbPerDay }: Eaten): boolean => cattleLbPerDay > 0 || horsesLbPerDay > 0;

/** Guides for grown cattle were held against weighed feed in trials; those for other kinds can only be held against each other. */
const isTried = ({ stock }: Kind): boolean => stock === 'cow' || stock === 'heifer' || stock === 'bull';

export default defineCalculator({
  slug: 'herd-intake',
  version: 4,
  title: 'Dry matter intake of a herd',
  inputs,
  refusals: [{ at: 'herd', when: ({ herd }) => herd.every(({ countHead }) => countHead === 0), say: 'Put in at least one head of stock.' }],
  compute,
}).describe({
  question: 'What does my herd eat?',
  lead: 'Pounds of feed a day and tons a month for the stock you have, with the water out. Then the same herd in animal units, by each way that people count them.',
  searchWords:
    'what cows eat, what ewes eat, animal unit, animal unit month, AUM, AUE, how much does a cow eat a day, percent of body weight, dry matter intake, forage demand, stocking rate, head-months, feed by month',
  first: ['herd', 'quality'],
  groups: [
    {
      title: 'What is known of the stock',
      inputs: ['stageFrom', 'month', 'weightFrom', 'intakeFrom'],
      summary: '{stageFrom}, asked for {month}, {weightFrom}, {intakeFrom}',
    },
    { title: 'Ways of counting', inputs: ['weightRule', 'calfRule', 'monthRule'], summary: '{weightRule}, {calfRule}, {monthRule}' },
  ],
  handout: ['herdLbPerDay', 'monthTon', 'allLinearAu', 'allMetabolicAu', 'eatenUnitsAu', 'ruleMonthLb'],
  quantities,
  results: [
    ranged('herdLbPerDay', ['lowLbPerDay', 'highLbPerDay'], {
      says: ({ intakeFrom, kinds }) =>
        `{low} to {high}, ${intakeFrom === 'guide' ? whyAppetiteRange(kinds.map(isTried)) : 'if your own figures miss by as much as the guides do'}`,
      short: '{low} to {high}',
      said: 'eaten by the herd',
      gap: ['less eaten by that herd', 'more eaten by that herd'],
    }),
    ranged('monthTon', ['lowMonthTon', 'highMonthTon'], { says: '{low} to {high}' }),
    { of: 'kinds' },
    shownWhen(({ stageFrom }) => stageFrom === 'birth-month', 'yearMonths', 'yearTon'),
    shown('allLinearAu', 'allMetabolicAu', 'eatenUnitsAu', 'ruleMonthLb'),
    { of: 'calfCounts', when: ({ calvesHead }) => calvesHead > 0 },
    { of: 'monthCounts' },
  ],
  steps: [
    tabulate('kinds', {
      says: 'Each kind: what one eats, what all of them eat, and their animal units by weight. Calves on their mothers are kept apart for now.',
      source: 'hibberd-thrift-1992, gross-intake and the other guides below',
      formulas: {
        eachLbPerDay: tex`\frac{\q{weightLb} \times \q{likelyPercent}}{100}`,
        lineLbPerDay: tex`\q{countHead} \times \q{eachLbPerDay}`,
        linearAu: [
          { when: ({ stock }) => stock === 'calf', formula: '0', because: 'calves are counted below' },
          { formula: tex`\q{countHead} \times \frac{\q{weightLb}}{1000}` },
        ],
        metabolicAu: [
          { when: ({ stock }) => stock === 'calf', formula: '0', because: 'calves are counted below' },
          { formula: tex`\q{countHead} \times (\frac{\q{weightLb}}{1000})^{0.75}` },
        ],
        calfLinearAu: [
          { when: ({ stock }) => stock === 'calf', formula: tex`\q{countHead} \times \frac{\q{weightLb}}{1000}` },
          { formula: '0', because: 'not a calf on its mother' },
        ],
        calfMetabolicAu: [
          { when: ({ stock }) => stock === 'calf', formula: tex`\q{countHead} \times (\frac{\q{weightLb}}{1000})^{0.75}` },
          { formula: '0', because: 'not a calf on its mother' },
        ],
      },
      sums: {
        herdLbPerDay: 'lineLbPerDay',
        grownLinearAu: 'linearAu',
        grownMetabolicAu: 'metabolicAu',
        calvesHead: 'calfHead',
        calvesLinearAu: 'calfLinearAu',
        calvesMetabolicAu: 'calfMetabolicAu',
      },
    }),
    tabulate('ends', {
      says: 'Cows, bred heifers and bulls may eat 17 percent less or more, since trials found one usual guide 14 to 17 percent low and another too high by about as much. For other kinds the ends are the least and the most that guides print, each over the likely figure.',
      source: 'hibberd-thrift-1992, gross-intake and the other guides below',
      formulas: { lowLineLbPerDay: tex`\q{lineLbPerDay} \times \q{lowRatio}`, highLineLbPerDay: tex`\q{lineLbPerDay} \times \q{highRatio}` },
      sums: { lowLbPerDay: 'lowLineLbPerDay', highLbPerDay: 'highLineLbPerDay' },
    }),
    lookup('ruleLbPerDay', { says: 'Pounds a day for one animal unit: {monthRule}.', source: 'nrph-2003, chapter 6, and the pages below' }),
    lookup('ruleDays', { says: 'Days that the same convention calls a month.', source: 'nrph-2003, chapter 6, and the pages below' }),
    formula('monthLb', tex`\q{herdLbPerDay} \times \q{ruleDays}`, { says: 'Eaten in those days.' }),
    formula('monthTon', tex`\frac{\q{monthLb}}{2000}`, { says: 'In tons.' }),
    tabulate('yearMonths', {
      onlyWhen: ({ stageFrom }) => stageFrom === 'birth-month',
      says: 'The first table again for every month, with the stage that each kind is in by then. Head and weights are taken to stay as they are.',
      source: 'hibberd-thrift-1992, with the other guides below',
      formulas: { inMonthTon: tex`\frac{\q{inMonthLbPerDay} \times \q{lengthDays}}{2000}` },
      sums: { yearTon: 'inMonthTon' },
    }),
    byCase('allLinearAu', {
      says: 'Animal units straight by weight, with the calves by your rule.',
      source: 'unl-stocking-creep, with extension-pasture-rent and srm-1998',
      ways: [
        { when: ({ calfRule }) => calfRule === 'within', formula: tex`\q{grownLinearAu}`, because: 'cow and calf are one until weaning' },
        { when: ({ calfRule }) => calfRule === 'fixed', formula: tex`\q{grownLinearAu} + 0.3 \times \q{calvesHead}` },
        { formula: tex`\q{grownLinearAu} + \q{calvesLinearAu}` },
      ],
    }),
    byCase('allMetabolicAu', {
      says: 'The same by the metabolic rule: a heavy animal eats less for its weight, a light one more.',
      source: 'manske-1998, method',
      ways: [
        { when: ({ calfRule }) => calfRule === 'within', formula: tex`\q{grownMetabolicAu}`, because: 'cow and calf are one until weaning' },
        { when: ({ calfRule }) => calfRule === 'fixed', formula: tex`\q{grownMetabolicAu} + 0.3 \times \q{calvesHead}` },
        { formula: tex`\q{grownMetabolicAu} + \q{calvesMetabolicAu}` },
      ],
    }),
    byCase('unitsAu', {
      says: 'Your rule.',
      ways: [{ when: ({ weightRule }) => weightRule === 'linear', formula: tex`\q{allLinearAu}` }, { formula: tex`\q{allMetabolicAu}` }],
    }),
    byCase('otherRuleAu', {
      says: 'And the other one.',
      ways: [{ when: ({ weightRule }) => weightRule === 'linear', formula: tex`\q{allMetabolicAu}` }, { formula: tex`\q{allLinearAu}` }],
    }),
    tabulate('calfCounts', {
      onlyWhen: ({ calvesHead }) => calvesHead > 0,
      says: 'What each rule for calves would give, by your weight rule.',
      source: 'unl-stocking-creep, with extension-pasture-rent and srm-1998',
      formulas: {
        countedAu: [
          { when: ({ rule, weightRule }) => rule === 'within' && weightRule === 'linear', formula: tex`\q{grownLinearAu}` },
          { when: ({ rule }) => rule === 'within', formula: tex`\q{grownMetabolicAu}` },
          {
            when: ({ rule, weightRule }) => rule === 'fixed' && weightRule === 'linear',
            formula: tex`\q{grownLinearAu} + 0.3 \times \q{calvesHead}`,
          },
          { when: ({ rule }) => rule === 'fixed', formula: tex`\q{grownMetabolicAu} + 0.3 \times \q{calvesHead}` },
          { when: ({ weightRule }) => weightRule === 'linear', formula: tex`\q{grownLinearAu} + \q{calvesLinearAu}` },
          { formula: tex`\q{grownMetabolicAu} + \q{calvesMetabolicAu}` },
        ],
      },
    }),
    formula('eatenUnitsAu', tex`\frac{\q{herdLbPerDay}}{\q{ruleLbPerDay}}`, {
      says: 'The units that would eat as much as your herd does. Where this is far from your rule, plan in pounds.',
      source: 'texas-animal-units',
    }),
    formula('ruleMonthLb', tex`\q{unitsAu} \times \q{ruleLbPerDay} \times \q{ruleDays}`, {
      says: 'What a lease or a range plan with your conventions would set aside for the herd in a month.',
    }),
    tabulate('monthCounts', {
      says: 'The same under every month that people print.',
      source:
        'nrph-2003, with launchbaugh-carrying-capacity, oregon-state-pasture-capacity, unl-beefwatch-2023, kansas-wildlife-grazing, drovers-grazing-plan-2012 and nrcs-range-guides (915 lb from memory)',
      formulas: {
        unitLb: tex`\q{countLbPerDay} \times \q{countDays}`,
        byUnitsLb: tex`\q{unitsAu} \times \q{unitLb}`,
        eatenMonthLb: tex`\q{herdLbPerDay} \times \q{countDays}`,
      },
    }),
  ],
  cautions: [
    caution(({ weightFrom }) => weightFrom === 'guessed', {
      lead: 'Weights guessed by eye run light: the herd eats more than this says.',
      say: 'Weights guessed by eye run light, and the herd then eats more than this says. Look at the sale tickets of your culls before you buy or sell on it.',
      source: 'common practice',
    }),
    caution(
      ({ intakeFrom, quality, kinds }) =>
        intakeFrom === 'guide' && quality === 'poor' && kinds.some(({ stock }) => stock === 'cow' || stock === 'heifer'),
      {
        lead: 'On poor feed cows lose flesh. Urea and grain can kill hungry stock.',
        life: true,
        say: 'On poor feed a cow eats less because it passes slowly, not because she needs less. She loses flesh. Have the feed tested and ask what supplement it takes. Change feed over a week or two; urea and grain can kill hungry stock.',
        source: 'common practice',
      },
    ),
    caution(({ kinds }) => lacksYoung(kinds, ['cow', 'heifer'], 'calf'), {
      lead: 'Cows nurse, and no line is for their calves. Give them one.',
      say: 'Cows nurse, and no line is for calves on their mothers. From about three months calves graze, so give them one.',
      source: 'unl-stocking-creep',
    }),
    caution(({ kinds }) => lacksYoung(kinds, ['ewe', 'doe'], 'lamb'), {
      lead: 'Ewes or does nurse, and no line is for their young. Give them one.',
      say: 'Ewes or does nurse, and no line is for their young. Lambs and kids graze within weeks, so give them one as growing lambs.',
      source: 'common practice',
    }),
    caution(({ kinds }) => kinds.some(({ stock }) => stock === 'horse') && kinds.some(({ stock }) => stock !== 'horse'), {
      lead: 'Keep cattle feed with monensin from horses: a little can kill one.',
      life: true,
      say: 'Keep cattle feed with monensin away from horses; a little can kill one.',
      source: 'common practice',
    }),
    caution((values) => hasSheep(values) && (hasLarge(values) || has(values, 'doe')), {
      lead: 'The copper in mineral or feed for other stock can kill sheep. Feed apart.',
      life: true,
      say: 'Mineral and feed made for cattle, horses or goats can hold more copper than sheep can stand. It builds up for months while they look well. Feed them apart, and hang such mineral higher than a sheep can reach.',
      source: 'van-metre-copper, with producer-copper-2012 and common practice',
    }),
    caution((values) => has(values, 'doe') && hasLarge(values) && !hasSheep(values), {
      lead: 'The copper in cattle or horse feed can poison goats. Feed them apart.',
      life: true,
      say: 'Goats stand more copper than sheep and less than cattle: mineral and feed made for cattle or horses can hold too much. Give goats their own, and ask your veterinarian how much they need.',
      source: 'van-metre-copper',
    }),
  ],
  limits: [
    'It says what stock eat, not what they waste or trample. Hay put out and grass grown must be more.',
    'It takes one day, and by birth months the months around it. Appetite also changes with the feed and in heat and cold, and the head that you sell or buy must be put in by hand.',
    'Guides disagree, and your cows may not eat like any of them. A week of weighed hay beats any table. The range under the result takes in, for cows, how far the usual guides missed in trials; for other kinds how far the guides differ, which says nothing of how far all of them may miss.',
    'For stockers the guides print 3 % of weight. The equation for growing cattle gives 1.8 to 2.6 % for calves and 2.4 to 3.1 % for yearlings, by weight and feed, so 2.5 is taken, from 2 to 3. A light yearling on good grass eats the most.',
    'The figures for ewes and does near birth or nursing, for growing lambs and for mares are partly from memory of the feeding standards.',
    'An animal unit is a way of counting, not something measured. Two people can both be right and 50 % apart. Write the pounds beside it.',
    'Pounds here have the water out. Air-dry hay or range yields hold about a tenth of water more.',
  ],
  note: ({ weightRule }, show) =>
    `The herd eats about ${show('herdLbPerDay')} with the water out (${show('lowLbPerDay')} to ${show('highLbPerDay')}), ${show('monthTon')} in a month of ${show('ruleDays')}. That is ${show('allLinearAu')} straight by weight${weightRule === 'linear' ? ' (your rule)' : ''}, ${show('allMetabolicAu')} by metabolic weight${weightRule === 'metabolic' ? ' (your rule)' : ''}, and ${show('eatenUnitsAu')} by what they eat at ${show('ruleLbPerDay')} each.`,
  picture: {
    kind: 'shares',
    whole: 'herdLbPerDay',
    parts: [
      { of: 'cattleLbPerDay', tone: 'kept' },
      { of: 'smallLbPerDay', tone: 'dots' },
      { of: 'horsesLbPerDay', tone: 'lines' },
    ],
  },
  sources: [
    'hibberd-thrift-1992',
    'michigan-beef-notes',
    'nrc-beef-1996',
    'mullenix-2022',
    'luling-foundation',
    'banta-agproud',
    'semler-sheep',
    'schoenian-intake',
    'gross-intake',
    'unl-stocking-creep',
    'manske-1998',
    'extension-pasture-rent',
    'srm-1998',
    'nrph-2003',
    'launchbaugh-carrying-capacity',
    'oregon-state-pasture-capacity',
    'unl-beefwatch-2023',
    'kansas-wildlife-grazing',
    'drovers-grazing-plan-2012',
    'texas-animal-units',
    'nrcs-range-guides',
    'van-metre-copper',
    'producer-copper-2012',
  ],
  changes: [
    {
      version: 2,
      say: 'A stocker or growing heifer is taken to eat 2.5 % of its weight, from 2 to 3, no longer 3: that is the top of what the equation for growing cattle gives.',
    },
    {
      version: 3,
      say: 'The range takes each kind by its own guides: 17 % either way for cows, bred heifers and bulls, the least and the most that guides print for other kinds. Before, all kinds took the 17 % of cows.',
    },
    {
      version: 4,
      say: 'A bull is taken to eat 2 % of his weight on fair feed, as every other form has it, no longer 2.2 % like a dry cow: the heavier the animal, the smaller the share of its weight that it eats.',
    },
  ],
  topic: 'grass',
  order: 40,
  guides: ['feeding-the-herd', 'sheep-goats-and-horses'],
});
