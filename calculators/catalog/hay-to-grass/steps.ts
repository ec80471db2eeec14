import { keptWays } from '../../asks/hay.ts';
import { byCase, formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import { hasOwn, ownByTable, type Results } from './compute.ts';
import { countsCold } from './herd.ts';
import type { Values } from './inputs.ts';

// What the steps of the working have in common.

export type All = Values & Results;
export type HaySteps = Working<All, Results>;
export const isOwnLooked = (values: All): boolean => ownByTable(values) !== undefined;
/** Only a wet coat has two rules. */
export const isWet = (values: All): boolean => countsCold(values) && values.coat === 'wet';
export const buys = ({ buyTon }: All): boolean => buyTon > 0;
/** A saving under a ton is lost in what the trials and the guides do not know. */
export const savesByFeeder = ({ feederSavesTon }: All): boolean => feederSavesTon >= 1;
export const savesByRoof = ({ roofSavesTon }: All): boolean => roofSavesTon >= 1;

export const eatenSteps: HaySteps = [
  lookup('periodDays', { says: 'From {fromDay} to {toDay}, counted on the calendar.', source: 'common practice' }),
  when(countsCold, [
    lookup('criticalF', {
      says: 'How cold it may feel before cattle with this coat need more feed: {coat}.',
      source: 'rusche-2020, lower critical temperatures',
    }),
    byCase('chillPercent', {
      says: 'One percent more for each degree Fahrenheit below that; for a wet coat one or two, by the rule that you chose.',
      source: 'rusche-2020, general rule, with selk-wet-coat',
      ways: [
        {
          when: ({ coat, wetCoatRule }) => coat === 'wet' && wetCoatRule === 'two',
          formula: tex`2 \max(\q{criticalF} - \q{feelsLikeF}, 0)`,
          because: 'twice as much for a wet coat',
        },
        { formula: tex`\max(\q{criticalF} - \q{feelsLikeF}, 0)` },
      ],
    }),
  ]),
  byCase('otherChillPercent', {
    onlyWhen: isWet,
    says: 'And by the other rule for wet coats.',
    source: 'beck-cold-2025, with kansas-cold-2025',
    ways: [
      {
        when: ({ wetCoatRule }) => wetCoatRule === 'two',
        formula: tex`\max(\q{criticalF} - \q{feelsLikeF}, 0)`,
        because: 'the same for a wet coat as for a dry one',
      },
      { formula: tex`2 \max(\q{criticalF} - \q{feelsLikeF}, 0)`, because: 'twice as much for a wet coat' },
    ],
  }),
  formula('coldPercent', tex`\frac{\q{chillPercent} \times \q{coldDays}}{\q{periodDays}}`, {
    onlyWhen: countsCold,
    says: 'The cold days spread over the whole time.',
  }),
  tabulate('kinds', {
    says: 'What each kind eats, with the water out: the days before birth at one rate, the days after at the other. Where none are born, all days are before. Ewes and does eat more in the last six weeks before birth: there the guides’ figure for those weeks stands, 3.5 and 4 % of their weight, or what you gave if it is more.',
    source: 'nmsu-ewe-gestation, with texas-animal-units and luling-foundation',
    formulas: {
      beforeDays: tex`\min(\max(\q{toBirthDays}, 0), \q{periodDays})`,
      lateInDays: [
        {
          when: ({ latePercent, intakePercent }) => latePercent > intakePercent,
          formula: tex`\q{beforeDays} - \min(\max(\q{toBirthDays} - 42, 0), \q{beforeDays})`,
          because: 'the last six weeks',
        },
        { formula: '0' },
      ],
      afterDays: tex`\q{periodDays} - \q{beforeDays}`,
      eachLbPerDay: tex`\frac{\q{weightLb} (\q{intakePercent} (\q{beforeDays} - \q{lateInDays}) + \q{latePercent} \times \q{lateInDays} + \q{nursingPercent} \times \q{afterDays})}{100 \times \q{periodDays}} (1 + \frac{\q{addedPercent}}{100})`,
      kindLb: tex`\q{countHead} \times \q{eachLbPerDay} \times \q{periodDays}`,
      endLbPerDay: [
        {
          when: ({ afterDays }) => afterDays > 0,
          formula: tex`\frac{\q{countHead} \q{weightLb} \q{nursingPercent}}{100}`,
          because: 'nursing by then',
        },
        {
          when: ({ lateInDays }) => lateInDays > 0,
          formula: tex`\frac{\q{countHead} \q{weightLb} \q{latePercent}}{100}`,
          because: 'near birth by then',
        },
        { formula: tex`\frac{\q{countHead} \q{weightLb} \q{intakePercent}}{100}` },
      ],
    },
    sums: { dryMatterLb: 'kindLb', herdEndLbPerDay: 'endLbPerDay' },
  }),
  formula('dryMatterTon', tex`\frac{\q{dryMatterLb}}{2000}`, { says: 'In tons.' }),
  byCase('besideLb', {
    onlyWhen: ({ beside }) => beside !== 'none',
    says: 'Other feed, taken to spare hay pound for pound.',
    ways: [
      { when: ({ beside }) => beside === 'standing', formula: tex`\q{standingLb}` },
      { when: ({ beside }) => beside === 'daily', formula: tex`\q{otherFeedLbPerDay} \times \q{periodDays}` },
      { formula: tex`\q{standingLb} + \q{otherFeedLbPerDay} \times \q{periodDays}` },
    ],
  }),
  formula('hayEatenLb', tex`\max(\q{dryMatterLb} - \q{besideLb}, 0)`, { says: 'The rest must come from hay.' }),
];

export const lossesSteps: HaySteps = [
  lookup('feedingLossPercent', {
    onlyWhen: ({ feeder }) => feeder !== 'known',
    says: 'What the trials lost this way: {feeder}. Where trials differ, the middle or the one repeated most.',
    source: 'lalman-feeders, with buskirk-2003, schnakenberg-feeders, bell-martz-1973 and kallenbach-g4570',
  }),
  when(
    ({ storage }) => storage !== 'known',
    [
      byCase('boughtMonths', {
        says: 'How long the bought hay stands: the last bale the whole time, the first one not at all.',
        source: 'common practice',
        ways: [
          { when: ({ storedFrom }) => storedFrom === 'months', formula: tex`\q{storedMonths}`, because: 'as you gave it' },
          { formula: tex`\frac{\q{periodDays} / 30.4375}{2}`, because: 'half of the days on hay' },
        ],
      }),
      lookup('lossAt9Percent', { says: 'What is lost by nine months ({storage}; rain {yearlyRain}).', source: 'huhnke-bae1716, up to 9 months' }),
      lookup('lossAt15Percent', { says: 'And by the middle of twelve to eighteen months.', source: 'huhnke-bae1716, 12 to 18 months' }),
    ],
  ),
  byCase('storageLossPercent', {
    says: 'Lost in storage by the months that it really stands, on a straight line between those.',
    ways: [
      { when: ({ storage }) => storage === 'known', formula: tex`\q{knownStoragePercent}`, because: 'your own figure' },
      { when: ({ boughtMonths }) => boughtMonths <= 9, formula: tex`\q{lossAt9Percent} \times \frac{\q{boughtMonths}}{9}` },
      { formula: tex`\q{lossAt9Percent} + (\q{lossAt15Percent} - \q{lossAt9Percent}) \frac{\min(\q{boughtMonths}, 15) - 9}{15 - 9}` },
    ],
  }),
  byCase('feedingKeptRatio', { says: 'What feeding leaves.', ways: keptWays('feedingLossPercent') }),
  byCase('storageKeptRatio', { says: 'What storage leaves.', ways: keptWays('storageLossPercent') }),
  formula('eatenRatio', tex`(1 - \frac{\q{moisturePercent}}{100}) \times \q{storageKeptRatio} \times \q{feedingKeptRatio}`, {
    says: 'Water and losses one upon another: what the cow gets of a ton as weighed. Losses are never added up.',
    source: 'wv-farm-bureau-2014, p. 15',
  }),
];

export const onHandSteps: HaySteps = [
  formula('ownTon', tex`\frac{\q{ownCount} \times \q{ownBaleLb}}{2000}`, { onlyWhen: hasOwn, says: 'Hay on hand, as it was weighed.' }),
  when(isOwnLooked, [
    lookup('ownWeighingMonths', { says: 'How long it had stood when it was weighed.', source: 'common practice' }),
    lookup('ownFeedingMonths', { says: 'How long it will have stood in the middle of feeding, from {baledDay} on.', source: 'common practice' }),
    lookup('ownLossAtWeighingPercent', { says: 'Lost by the weighing ({ownStorage}).', source: 'huhnke-bae1716, straight line between its months' }),
    lookup('ownLossAtFeedingPercent', { says: 'Lost by the middle of feeding.', source: 'huhnke-bae1716, straight line between its months' }),
  ]),
  when(hasOwn, [
    byCase('ownLossPercent', {
      says: 'Still to be lost, as a share of what was weighed.',
      ways: [
        { when: ({ ownStorage }) => ownStorage === 'known', formula: tex`\q{knownOwnPercent}`, because: 'your own figure' },
        {
          when: ({ ownStorage }) => ownStorage === 'rind',
          formula: tex`100 (1 - (1 - \frac{2 \times \q{rindIn}}{12 \times \q{ownDiameterFt}})^2)`,
          because: 'the spoiled rind, with bales end to end',
        },
        { formula: tex`100 (1 - \frac{1 - \q{ownLossAtFeedingPercent} / 100}{1 - \q{ownLossAtWeighingPercent} / 100})` },
      ],
    }),
    byCase('ownStorageKeptRatio', { says: 'What storage leaves of it.', ways: keptWays('ownLossPercent') }),
    formula('ownAtFeedingTon', tex`\q{ownTon} \times \q{ownStorageKeptRatio}`, { says: 'So much of it is left to feed.' }),
    formula('ownEatenRatio', tex`(1 - \frac{\q{moisturePercent}}{100}) \times \q{ownStorageKeptRatio} \times \q{feedingKeptRatio}`, {
      says: 'What the cow gets of a ton of it as weighed.',
    }),
    formula('ownUsedTon', tex`\min(\q{ownTon}, \frac{\q{hayEatenLb}}{2000 \times \q{ownEatenRatio}})`, {
      says: 'It goes first, as far as it reaches or is needed.',
    }),
    formula('ownEatenLb', tex`2000 \times \q{ownUsedTon} \times \q{ownEatenRatio}`, { says: 'And gives so much to eat.' }),
    formula('ownLeftTon', tex`\max(\q{ownTon} - \q{ownUsedTon}, 0)`, { says: 'Left over.' }),
  ]),
];

export const haySteps: HaySteps = [
  formula('buyTon', tex`\frac{\max(\q{hayEatenLb} - \q{ownEatenLb}, 0)}{2000 \times \q{eatenRatio}}`, {
    says: 'What is still to be eaten, over the share that the cow gets of a ton.',
    source: 'banta-hay-needs, example',
  }),
  formula('haveTon', tex`\q{ownUsedTon} + \q{buyTon}`, { says: 'Hay to have in all.' }),
  lookup('otherHaveTon', {
    onlyWhen: isWet,
    says: 'The whole working again with {otherChillPercent} more on a cold day, as the other rule for wet coats has it.',
    source: 'our own',
  }),
  formula('waterTon', tex`\q{haveTon} \times \frac{\q{moisturePercent}}{100}`, { says: 'Of that, water.' }),
  formula('eatenTon', tex`\frac{\q{hayEatenLb}}{2000}`, { says: 'Of what they eat, so much as hay.' }),
  formula('feedingLostTon', tex`\max(\frac{\q{eatenTon}}{\q{feedingKeptRatio}} - \q{eatenTon}, 0)`, { says: 'Lost in feeding.' }),
  formula('storageLostTon', tex`\max(\q{haveTon} - \q{waterTon} - \q{eatenTon} - \q{feedingLostTon}, 0)`, { says: 'Lost in storage: the rest.' }),
  formula('putOutLbPerDay', tex`\frac{\q{hayEatenLb}}{\q{feedingKeptRatio} (1 - \q{moisturePercent} / 100) \q{periodDays}}`, {
    says: 'To put out on an average day, as fed.',
  }),
  byCase('twoWeeksTon', {
    says: 'Each two weeks that the grass comes later, at the rate that they eat by then.',
    source: 'anderson-turnout, 10 to 14 days after drought',
    ways: [
      {
        when: ({ beside }) => beside === 'daily' || beside === 'both',
        formula: tex`\frac{14 \max(\q{herdEndLbPerDay} - \q{otherFeedLbPerDay}, 0)}{2000 \times \q{eatenRatio}}`,
      },
      { formula: tex`\frac{14 \times \q{herdEndLbPerDay}}{2000 \times \q{eatenRatio}}` },
    ],
  }),
];

export const moneySteps: HaySteps = [
  when(buys, [
    byCase('boughtBaleLb', {
      says: 'The bale that is bought.',
      source: 'banta-2012, bale size and weight',
      ways: [
        { when: ({ baleFrom }) => baleFrom === 'weighed', formula: tex`\q{baleLb}`, because: 'as weighed' },
        { when: ({ baleFrom }) => baleFrom === 'round', formula: tex`\frac{\pi}{4} \q{diameterFt}^2 \times \q{widthFt} \times \q{densityLbPerFt3}` },
        { formula: tex`\q{lengthFt} \times \q{widthFt} \times \q{heightFt} \times \q{densityLbPerFt3}` },
      ],
    }),
    lookup('balesCount', { says: '{buyTon} in bales of {boughtBaleLb}, rounded up to whole bales.', source: 'common practice' }),
    lookup('loadsCount', { says: '{balesCount} bales at {loadCount} a load, rounded up to whole loads.', source: 'common practice' }),
    byCase('perBaleUsd', {
      says: 'A bale costs.',
      ways: [
        { when: ({ pricedBy }) => pricedBy === 'bale', formula: tex`\q{balePriceUsd}` },
        { formula: tex`\frac{\q{priceUsdPerTon} \times \q{boughtBaleLb}}{2000}` },
      ],
    }),
    formula('costUsd', tex`\q{balesCount} \times \q{perBaleUsd} + \q{loadsCount} \times \q{freightUsdPerLoad}`, {
      says: 'Whole bales, and a trip for each load, full or not.',
    }),
    formula('fullLoadBalesCount', tex`\q{loadsCount} \times \q{loadCount}`, { says: 'Where only full loads are sold.' }),
    formula('fullLoadsUsd', tex`\q{fullLoadBalesCount} \times \q{perBaleUsd} + \q{loadsCount} \times \q{freightUsdPerLoad}`, {
      says: 'And what those cost.',
    }),
    formula('deliveredUsdPerTon', tex`\frac{2000 (\q{perBaleUsd} + \q{freightUsdPerLoad} / \q{loadCount})}{\q{boughtBaleLb}}`, {
      says: 'A ton at your place, in full loads.',
    }),
    formula('eatenUsdPerTon', tex`\frac{\q{deliveredUsdPerTon}}{\q{eatenRatio}}`, { says: 'A ton inside the cow, water and losses out.' }),
    formula('herdUsdPerDay', tex`\frac{\q{costUsd}}{\q{periodDays}}`, { says: 'A day.' }),
    tabulate('kindCosts', {
      says: 'A head a day: the cost shared by what each one eats.',
      formulas: { eachUsdPerDay: tex`\frac{\q{costUsd} \times \q{eachLbPerDay}}{\q{dryMatterLb}}` },
    }),
    formula('headUsdPerDay', tex`\frac{\q{costUsd} \times \q{firstLbPerDay}}{\q{dryMatterLb}}`, {
      says: 'One of the first kind eats {firstLbPerDay}.',
    }),
  ]),
];

export const savingsSteps: HaySteps = [
  when(savesByFeeder, [
    lookup('coneLossPercent', { says: 'A cone feeder in the trials.', source: 'buskirk-2003, with lalman-feeders' }),
    byCase('coneKeptRatio', { says: 'What it leaves to eat.', ways: keptWays('coneLossPercent') }),
    formula('coneTimesRatio', tex`\max(\frac{\q{coneKeptRatio}}{\q{feedingKeptRatio}}, 1)`, { says: 'So each ton goes further by this much.' }),
    formula(
      'coneBuyTon',
      tex`\frac{\max(\q{hayEatenLb} - 2000 \times \min(\q{ownTon}, \frac{\q{hayEatenLb}}{2000 \q{ownEatenRatio} \q{coneTimesRatio}}) \q{ownEatenRatio} \q{coneTimesRatio}, 0)}{2000 \q{eatenRatio} \q{coneTimesRatio}}`,
      { says: 'And so much would be bought.' },
    ),
    formula('feederSavesTon', tex`\max(\q{buyTon} - \q{coneBuyTon}, 0)`, { says: 'Saved.' }),
    formula('feederSavesUsd', tex`\q{feederSavesTon} \times \q{deliveredUsdPerTon}`, { says: 'In money, at the delivered price.' }),
  ]),
  when(savesByRoof, [
    lookup('roofLossPercent', { says: 'The same months under a roof.', source: 'huhnke-bae1716, straight line between its months' }),
    byCase('roofKeptRatio', { says: 'What that leaves.', ways: keptWays('roofLossPercent') }),
    formula('roofSavesTon', tex`\max(\q{buyTon} (1 - \frac{\q{storageKeptRatio}}{\q{roofKeptRatio}}), 0)`, {
      says: 'Bought hay saved by it, this one time.',
    }),
    formula('roofSavesUsd', tex`\q{roofSavesTon} \times \q{deliveredUsdPerTon}`, { says: 'In money, at the delivered price.' }),
  ]),
];

export const rangeSteps: HaySteps = [
  tabulate('kindEnds', {
    says: 'Grown cattle and stock not listed may eat 17 percent less or more, since trials of cows found one usual guide 14 to 17 percent low and another too high by about as much. For other kinds the ends are the least and the most that guides print, each over the likely figure; of a kind that nurses for a part of the time, each part by its own guides.',
    source: 'gross-intake, abstract, with mullenix-2022, schoenian-intake, luling-foundation and texas-animal-units',
    formulas: { lowKindLb: tex`\q{kindLb} \times \q{lowRatio}`, highKindLb: tex`\q{kindLb} \times \q{highRatio}` },
    sums: { lowDryMatterLb: 'lowKindLb', highDryMatterLb: 'highKindLb' },
  }),
  tabulate('edges', {
    says: 'The same sums for the least and the most that the herd may eat, at the low and the high price. Bales and loads are rounded up.',
    source: 'our own',
    formulas: {
      needLb: tex`\max(\q{edgeDryMatterLb} - \q{besideLb}, 0)`,
      edgeOwnTon: tex`\min(\q{ownTon}, \frac{\q{needLb}}{2000 \q{ownEatenRatio}})`,
      edgeBuyTon: tex`\frac{\max(\q{needLb} - 2000 \q{edgeOwnTon} \q{ownEatenRatio}, 0)}{2000 \q{eatenRatio}}`,
      edgeHaveTon: tex`\q{edgeOwnTon} + \q{edgeBuyTon}`,
      edgeCostUsd: tex`\q{edgeBalesCount} \q{edgePerBaleUsd} + \q{edgeLoadsCount} \q{freightUsdPerLoad}`,
    },
  }),
];

export const steps: HaySteps = [...eatenSteps, ...lossesSteps, ...onHandSteps, ...haySteps, ...moneySteps, ...savingsSteps, ...rangeSteps];
