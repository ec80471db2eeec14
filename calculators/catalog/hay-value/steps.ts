import { byCase, formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import type { Results } from './compute.ts';
import type { Values } from './inputs.ts';

// What the steps of the working have in common.

export type All = Values & Results;
export type HaySteps = Working<All, Results>;
export const hasSlip = ({ slip }: Pick<Values, 'slip'>): boolean => slip === 'tested';
export const isCompared = ({ against }: Pick<Values, 'against'>): boolean => against !== 'none';
export const isByBale = ({ pricedBy }: Pick<Values, 'pricedBy'>): boolean => pricedBy === 'bale';
export const isByTable = ({ storage }: All): boolean => storage !== 'rind' && storage !== 'known';
export const isDivided = ({ lossConvention }: All): boolean => lossConvention === 'divide';
export const isDry = ({ slipBasis }: All): boolean => slipBasis === 'dry';
export const isByProtein = ({ against }: All): boolean => against === 'protein';
export const onTop = 'the loss put on top, as some sheets do';

export const slipSteps: HaySteps = [
  when(hasSlip, [
    byCase('proteinDryPercent', {
      says: 'Protein of the dry matter.',
      source: 'common practice',
      ways: [
        { when: isDry, formula: tex`\q{proteinPercent}`, because: 'as the slip has it' },
        { formula: tex`\frac{100 \times \q{proteinPercent}}{100 - \q{moisturePercent}}` },
      ],
    }),
    byCase('tdnDryPercent', {
      says: 'TDN of the dry matter.',
      source: 'common practice',
      ways: [
        { when: isDry, formula: tex`\q{tdnPercent}`, because: 'as the slip has it' },
        { formula: tex`\frac{100 \times \q{tdnPercent}}{100 - \q{moisturePercent}}` },
      ],
    }),
    formula('eatenProteinLb', tex`\q{eatenLb} \times \frac{\q{proteinDryPercent}}{100}`, {
      says: 'Protein eaten from a ton bought.',
      source: 'montana-richland-2022, cost per pound of protein',
    }),
    formula('eatenTdnLb', tex`\q{eatenLb} \times \frac{\q{tdnDryPercent}}{100}`, {
      says: 'TDN eaten from a ton bought.',
      source: 'penn-state-feeds-1993, comparing the value of hays',
    }),
    formula('proteinUsdPerLb', tex`\frac{\q{eatenUsdPerTon}}{2000 \times \q{proteinDryPercent} / 100}`, {
      says: 'What a pound of protein costs by the time it is eaten.',
      source: 'montana-richland-2022, cost per pound of protein',
    }),
    formula('tdnUsdPerLb', tex`\frac{\q{eatenUsdPerTon}}{2000 \times \q{tdnDryPercent} / 100}`, {
      says: 'And a pound of TDN.',
      source: 'warner-feedstuff-costs, example',
    }),
  ]),
  when(isCompared, [
    byCase('otherNutrientPercent', {
      says: 'The other feed holds, of its dry matter.',
      ways: [{ when: isByProtein, formula: tex`\q{otherProteinPercent}` }, { formula: tex`\q{otherTdnPercent}` }],
    }),
    byCase('otherUsdPerLb', {
      says: 'A pound of it in the other feed, its own loss counted.',
      source: 'montana-richland-2022, cost per pound of protein',
      ways: [
        {
          when: isDivided,
          formula: tex`\frac{\q{otherPriceUsdPerTon}}{2000 (1 - \q{otherLossPercent} / 100) (1 - \q{otherMoisturePercent} / 100) \times \q{otherNutrientPercent} / 100}`,
        },
        {
          formula: tex`\frac{\q{otherPriceUsdPerTon} (1 + \q{otherLossPercent} / 100)}{2000 (1 - \q{otherMoisturePercent} / 100) \times \q{otherNutrientPercent} / 100}`,
          because: onTop,
        },
      ],
    }),
    byCase('worthUsdPerTon', {
      says: 'So this hay is worth that, times what they get of it from a ton, less freight.',
      source: 'our own, the same sum turned round',
      ways: [
        {
          when: isByProtein,
          formula: tex`\q{otherUsdPerLb} \times 2000 \times \q{eatenRatio} \times \frac{\q{proteinDryPercent}}{100} - \q{freightUsdPerTon}`,
        },
        { formula: tex`\q{otherUsdPerLb} \times 2000 \times \q{eatenRatio} \times \frac{\q{tdnDryPercent}}{100} - \q{freightUsdPerTon}` },
      ],
    }),
  ]),
  formula('worthBaleUsd', tex`\frac{\q{worthUsdPerTon} \times \q{baleLb}}{2000}`, {
    onlyWhen: (values) => isCompared(values) && isByBale(values),
    says: 'For a bale.',
  }),
];

const lossSteps: HaySteps = [
  when(isByTable, [
    lookup('lossAt9Percent', { says: 'From the table: lost by nine months ({storage}, {yearlyRain}).', source: 'huhnke-bae1716, table 2' }),
    lookup('lossAt15Percent', { says: 'And by twelve to eighteen months, taken at fifteen.', source: 'huhnke-bae1716, table 2' }),
  ]),
  byCase('storageLossPercent', {
    says: 'Lost in storage.',
    ways: [
      { when: ({ storage }) => storage === 'known', formula: tex`\q{knownStoragePercent}`, because: 'your own figure' },
      {
        when: ({ storage, ends }) => storage === 'rind' && ends === 'sound',
        formula: tex`100 (1 - (1 - \frac{2 \times \q{rindIn}}{12 \times \q{diameterFt}})^2)`,
        because: 'the spoiled rind as a share of the bale',
      },
      {
        when: ({ storage }) => storage === 'rind',
        formula: tex`100 (1 - (1 - \frac{2 \times \q{rindIn}}{12 \times \q{diameterFt}})^2 (1 - \frac{2 \times \q{rindIn}}{12 \times \q{widthFt}}))`,
        because: 'the spoiled rind with both ends',
      },
      { when: ({ storedMonths }) => storedMonths <= 9, formula: tex`\q{lossAt9Percent} \times \frac{\q{storedMonths}}{9}` },
      {
        when: ({ storedMonths }) => storedMonths <= 15,
        formula: tex`\q{lossAt9Percent} + (\q{lossAt15Percent} - \q{lossAt9Percent}) \times \frac{\q{storedMonths} - 9}{6}`,
      },
      { formula: tex`\q{lossAt15Percent}`, because: 'held to 18 months, where the table ends' },
    ],
  }),
  lookup('feedingLossPercent', {
    onlyWhen: ({ feeder }) => feeder !== 'known',
    says: 'Lost in feeding ({feeder}), the middle of the trials.',
    source: 'lalman-feeders, with buskirk-2003, schnakenberg-feeders, bell-martz-1973, boyles-2019 and kallenbach-g4570',
  }),
  formula('feedingLossPercent', tex`\q{knownFeedingPercent}`, {
    onlyWhen: ({ feeder }) => feeder === 'known',
    says: 'Lost in feeding, your own figure.',
  }),
];

const priceSteps: HaySteps = [
  byCase('gateUsdPerTon', {
    says: 'The price of a ton as it stands.',
    source: 'banta-2012, price per ton',
    ways: [
      { when: isByBale, formula: tex`\frac{2000 \times \q{balePriceUsd}}{\q{baleLb}}` },
      { formula: tex`\q{priceUsdPerTon}`, because: 'as you gave it' },
    ],
  }),
  formula('deliveredUsdPerTon', tex`\q{gateUsdPerTon} + \q{freightUsdPerTon}`, { says: 'With freight.' }),
  ...lossSteps,
  byCase('afterStorageUsdPerTon', {
    says: 'A ton of what storage leaves.',
    source: 'undersander-storage, price with loss',
    ways: [
      { when: isDivided, formula: tex`\frac{\q{deliveredUsdPerTon}}{1 - \q{storageLossPercent} / 100}` },
      { formula: tex`\q{deliveredUsdPerTon} \times (1 + \frac{\q{storageLossPercent}}{100})`, because: onTop },
    ],
  }),
  byCase('afterFeedingUsdPerTon', {
    says: 'A ton of what they eat, as fed. Losses go one upon another, never added.',
    source: 'ball-extending-grazing, chain of losses',
    ways: [
      { when: isDivided, formula: tex`\frac{\q{afterStorageUsdPerTon}}{1 - \q{feedingLossPercent} / 100}` },
      { formula: tex`\q{afterStorageUsdPerTon} \times (1 + \frac{\q{feedingLossPercent}}{100})`, because: onTop },
    ],
  }),
  formula('eatenUsdPerTon', tex`\frac{\q{afterFeedingUsdPerTon}}{1 - \q{moisturePercent} / 100}`, {
    says: 'With the water out: nobody feeds a cow on water.',
    source: 'warner-feedstuff-costs, example',
  }),
  byCase('otherUsdPerTon', {
    says: 'What the other way of putting on losses would say.',
    source: 'undersander-storage, price with loss',
    ways: [
      {
        when: isDivided,
        formula: tex`\frac{\q{deliveredUsdPerTon} (1 + \q{storageLossPercent} / 100) (1 + \q{feedingLossPercent} / 100)}{1 - \q{moisturePercent} / 100}`,
        because: 'multiplied',
      },
      {
        formula: tex`\frac{\q{deliveredUsdPerTon}}{(1 - \q{storageLossPercent} / 100) (1 - \q{feedingLossPercent} / 100) (1 - \q{moisturePercent} / 100)}`,
        because: 'divided',
      },
    ],
  }),
  byCase('eatenRatio', {
    says: 'The same as a share: what ends in the cow of a ton bought.',
    ways: [
      {
        when: isDivided,
        formula: tex`(1 - \frac{\q{moisturePercent}}{100}) (1 - \frac{\q{storageLossPercent}}{100}) (1 - \frac{\q{feedingLossPercent}}{100})`,
      },
      { formula: tex`\frac{1 - \q{moisturePercent} / 100}{(1 + \q{storageLossPercent} / 100) (1 + \q{feedingLossPercent} / 100)}`, because: onTop },
    ],
  }),
  tabulate('priceLines', {
    says: 'At each of the three prices.',
    formulas: {
      lineDeliveredUsdPerTon: tex`\q{lineGateUsdPerTon} + \q{freightUsdPerTon}`,
      lineEatenUsdPerTon: tex`\frac{\q{lineDeliveredUsdPerTon}}{\q{eatenRatio}}`,
    },
  }),
];

const poundSteps: HaySteps = [
  formula('waterLb', tex`\q{boughtLb} \times \frac{\q{moisturePercent}}{100}`, {
    says: 'Where a ton bought goes, whatever way the price is figured. First the water.',
  }),
  formula('storageLostLb', tex`(\q{boughtLb} - \q{waterLb}) \times \frac{\q{storageLossPercent}}{100}`, {
    says: 'Then what storage takes of the dry hay.',
  }),
  formula('feedingLostLb', tex`(\q{boughtLb} - \q{waterLb} - \q{storageLostLb}) \times \frac{\q{feedingLossPercent}}{100}`, {
    says: 'Then what is trampled and left.',
  }),
  formula('eatenLb', tex`\q{boughtLb} - \q{waterLb} - \q{storageLostLb} - \q{feedingLostLb}`, { says: 'The rest is eaten.' }),
  formula(
    'wastedUsdPerTon',
    tex`\q{deliveredUsdPerTon} \times (1 - (1 - \frac{\q{storageLossPercent}}{100}) (1 - \frac{\q{feedingLossPercent}}{100}))`,
    { says: 'Money in what is lost, of each ton bought.', source: 'huhnke-bae1716, table 1' },
  ),
];

const swingSteps: HaySteps = [
  tabulate('swings', {
    says: 'What the answer depends on: one thing at a time goes to its low and its high end while the rest stays. The price has your ends; storage runs from {lowStoragePercent} to {highStoragePercent}, feeding from {lowFeedingPercent} to {highFeedingPercent}, water from {lowMoisturePercent} to {highMoisturePercent}; a guessed bale may weigh a tenth less. Ends are the published ones, or five points either way for a loss, three for water and an inch of rind where that is more or nothing is published.',
    source: 'our own, with huhnke-bae1716 and lalman-feeders',
    formulas: {
      atLowUsdPerTon: tex`\frac{\q{lowDeliveredUsdPerTon}}{\q{lowRatio}}`,
      atHighUsdPerTon: tex`\frac{\q{highDeliveredUsdPerTon}}{\q{highRatio}}`,
      swingUsdPerTon: tex`\max(\q{atLowUsdPerTon}, \q{atHighUsdPerTon}) - \min(\q{atLowUsdPerTon}, \q{atHighUsdPerTon})`,
    },
  }),
];

export const steps: HaySteps = [...priceSteps, ...poundSteps, ...slipSteps, ...swingSteps];
