import { slipSteps } from './slipSteps.ts';
import { type HayStep, isByBale, isByTable, isDivided, onTop } from './step.ts';

const lossSteps: readonly HayStep[] = [
  {
    kind: 'lookup',
    shows: 'lossAt9Percent',
    onlyWhen: isByTable,
    says: 'From the table: lost by nine months ({storage}, {yearlyRain}).',
    source: 'huhnke-bae1716, table 2',
  },
  {
    kind: 'lookup',
    shows: 'lossAt15Percent',
    onlyWhen: isByTable,
    says: 'And by twelve to eighteen months, taken at fifteen.',
    source: 'huhnke-bae1716, table 2',
  },
  {
    kind: 'formula',
    shows: 'storageLossPercent',
    says: 'Lost in storage.',
    ways: [
      { when: ({ storage }) => storage === 'known', formula: String.raw`\q{knownStoragePercent}`, because: 'your own figure' },
      {
        when: ({ storage, ends }) => storage === 'rind' && ends === 'sound',
        formula: String.raw`100 (1 - (1 - \frac{2 \times \q{rindIn}}{12 \times \q{diameterFt}})^2)`,
        because: 'the spoiled rind as a share of the bale',
      },
      {
        when: ({ storage }) => storage === 'rind',
        formula: String.raw`100 (1 - (1 - \frac{2 \times \q{rindIn}}{12 \times \q{diameterFt}})^2 (1 - \frac{2 \times \q{rindIn}}{12 \times \q{widthFt}}))`,
        because: 'the spoiled rind with both ends',
      },
      { when: ({ storedMonths }) => storedMonths <= 9, formula: String.raw`\q{lossAt9Percent} \times \frac{\q{storedMonths}}{9}` },
      {
        when: ({ storedMonths }) => storedMonths <= 15,
        formula: String.raw`\q{lossAt9Percent} + (\q{lossAt15Percent} - \q{lossAt9Percent}) \times \frac{\q{storedMonths} - 9}{6}`,
      },
      { formula: String.raw`\q{lossAt15Percent}`, because: 'held to 18 months, where the table ends' },
    ],
  },
  {
    kind: 'lookup',
    shows: 'feedingLossPercent',
    onlyWhen: ({ feeder }) => feeder !== 'known',
    says: 'Lost in feeding ({feeder}), the middle of the trials.',
    source: 'lalman-feeders, with buskirk-2003, schnakenberg-feeders, bell-martz-1973, boyles-2019 and kallenbach-g4570',
  },
  {
    kind: 'formula',
    shows: 'feedingLossPercent',
    onlyWhen: ({ feeder }) => feeder === 'known',
    says: 'Lost in feeding, your own figure.',
    ways: [{ formula: String.raw`\q{knownFeedingPercent}` }],
  },
];

const priceSteps: readonly HayStep[] = [
  {
    kind: 'formula',
    shows: 'gateUsdPerTon',
    says: 'The price of a ton as it stands.',
    source: 'banta-2012, price per ton',
    ways: [
      { when: isByBale, formula: String.raw`\frac{2000 \times \q{balePriceUsd}}{\q{baleLb}}` },
      { formula: String.raw`\q{priceUsdPerTon}`, because: 'as you gave it' },
    ],
  },
  { kind: 'formula', shows: 'deliveredUsdPerTon', says: 'With freight.', ways: [{ formula: String.raw`\q{gateUsdPerTon} + \q{freightUsdPerTon}` }] },
  ...lossSteps,
  {
    kind: 'formula',
    shows: 'afterStorageUsdPerTon',
    says: 'A ton of what storage leaves.',
    source: 'undersander-storage, price with loss',
    ways: [
      { when: isDivided, formula: String.raw`\frac{\q{deliveredUsdPerTon}}{1 - \q{storageLossPercent} / 100}` },
      { formula: String.raw`\q{deliveredUsdPerTon} \times (1 + \frac{\q{storageLossPercent}}{100})`, because: onTop },
    ],
  },
  {
    kind: 'formula',
    shows: 'afterFeedingUsdPerTon',
    says: 'A ton of what they eat, as fed. Losses go one upon another, never added.',
    source: 'ball-extending-grazing, chain of losses',
    ways: [
      { when: isDivided, formula: String.raw`\frac{\q{afterStorageUsdPerTon}}{1 - \q{feedingLossPercent} / 100}` },
      { formula: String.raw`\q{afterStorageUsdPerTon} \times (1 + \frac{\q{feedingLossPercent}}{100})`, because: onTop },
    ],
  },
  {
    kind: 'formula',
    shows: 'eatenUsdPerTon',
    says: 'With the water out: nobody feeds a cow on water.',
    source: 'warner-feedstuff-costs, example',
    ways: [{ formula: String.raw`\frac{\q{afterFeedingUsdPerTon}}{1 - \q{moisturePercent} / 100}` }],
  },
  {
    kind: 'formula',
    shows: 'otherUsdPerTon',
    says: 'What the other way of putting on losses would say.',
    source: 'undersander-storage, price with loss',
    ways: [
      {
        when: isDivided,
        formula: String.raw`\frac{\q{deliveredUsdPerTon} (1 + \q{storageLossPercent} / 100) (1 + \q{feedingLossPercent} / 100)}{1 - \q{moisturePercent} / 100}`,
        because: 'multiplied',
      },
      {
        formula: String.raw`\frac{\q{deliveredUsdPerTon}}{(1 - \q{storageLossPercent} / 100) (1 - \q{feedingLossPercent} / 100) (1 - \q{moisturePercent} / 100)}`,
        because: 'divided',
      },
    ],
  },
  {
    kind: 'formula',
    shows: 'eatenRatio',
    says: 'The same as a share: what ends in the cow of a ton bought.',
    ways: [
      {
        when: isDivided,
        formula: String.raw`(1 - \frac{\q{moisturePercent}}{100}) (1 - \frac{\q{storageLossPercent}}{100}) (1 - \frac{\q{feedingLossPercent}}{100})`,
      },
      {
        formula: String.raw`\frac{1 - \q{moisturePercent} / 100}{(1 + \q{storageLossPercent} / 100) (1 + \q{feedingLossPercent} / 100)}`,
        because: onTop,
      },
    ],
  },
  {
    kind: 'rows',
    of: 'priceLines',
    says: 'At each of the three prices.',
    formulas: {
      lineDeliveredUsdPerTon: String.raw`\q{lineGateUsdPerTon} + \q{freightUsdPerTon}`,
      lineEatenUsdPerTon: String.raw`\frac{\q{lineDeliveredUsdPerTon}}{\q{eatenRatio}}`,
    },
  },
];

const poundSteps: readonly HayStep[] = [
  {
    kind: 'formula',
    shows: 'waterLb',
    says: 'Where a ton bought goes, whatever way the price is figured. First the water.',
    ways: [{ formula: String.raw`\q{boughtLb} \times \frac{\q{moisturePercent}}{100}` }],
  },
  {
    kind: 'formula',
    shows: 'storageLostLb',
    says: 'Then what storage takes of the dry hay.',
    ways: [{ formula: String.raw`(\q{boughtLb} - \q{waterLb}) \times \frac{\q{storageLossPercent}}{100}` }],
  },
  {
    kind: 'formula',
    shows: 'feedingLostLb',
    says: 'Then what is trampled and left.',
    ways: [{ formula: String.raw`(\q{boughtLb} - \q{waterLb} - \q{storageLostLb}) \times \frac{\q{feedingLossPercent}}{100}` }],
  },
  {
    kind: 'formula',
    shows: 'eatenLb',
    says: 'The rest is eaten.',
    ways: [{ formula: String.raw`\q{boughtLb} - \q{waterLb} - \q{storageLostLb} - \q{feedingLostLb}` }],
  },
  {
    kind: 'formula',
    shows: 'wastedUsdPerTon',
    says: 'Money in what is lost, of each ton bought.',
    source: 'huhnke-bae1716, table 1',
    ways: [
      { formula: String.raw`\q{deliveredUsdPerTon} \times (1 - (1 - \frac{\q{storageLossPercent}}{100}) (1 - \frac{\q{feedingLossPercent}}{100}))` },
    ],
  },
];

const swingSteps: readonly HayStep[] = [
  {
    kind: 'rows',
    of: 'swings',
    says: 'What the answer depends on: one thing at a time goes to its low and its high end while the rest stays. The price has your ends; storage runs from {lowStoragePercent} to {highStoragePercent}, feeding from {lowFeedingPercent} to {highFeedingPercent}, water from {lowMoisturePercent} to {highMoisturePercent}; a guessed bale may weigh a tenth less. Ends are the published ones, or five points either way for a loss, three for water and an inch of rind where that is more or nothing is published.',
    source: 'our own, with huhnke-bae1716 and lalman-feeders',
    formulas: {
      atLowUsdPerTon: String.raw`\frac{\q{lowDeliveredUsdPerTon}}{\q{lowRatio}}`,
      atHighUsdPerTon: String.raw`\frac{\q{highDeliveredUsdPerTon}}{\q{highRatio}}`,
      swingUsdPerTon: String.raw`\max(\q{atLowUsdPerTon}, \q{atHighUsdPerTon}) - \min(\q{atLowUsdPerTon}, \q{atHighUsdPerTon})`,
    },
  },
];

export const steps: readonly HayStep[] = [...priceSteps, ...poundSteps, ...slipSteps, ...swingSteps];
