import { buys, type HayStep, isDivided, savesByFeeder, savesByRoof } from './step.ts';

export const moneySteps: readonly HayStep[] = [
  {
    kind: 'formula',
    shows: 'boughtBaleLb',
    onlyWhen: buys,
    says: 'The bale that is bought.',
    source: 'banta-2012, bale size and weight',
    ways: [
      { when: ({ baleFrom }) => baleFrom === 'weighed', formula: String.raw`\q{baleLb}`, because: 'as weighed' },
      {
        when: ({ baleFrom }) => baleFrom === 'round',
        formula: String.raw`\frac{\pi}{4} \q{diameterFt}^2 \times \q{widthFt} \times \q{densityLbPerFt3}`,
      },
      { formula: String.raw`\q{lengthFt} \times \q{widthFt} \times \q{heightFt} \times \q{densityLbPerFt3}` },
    ],
  },
  {
    kind: 'lookup',
    shows: 'balesCount',
    onlyWhen: buys,
    says: '{buyTon} in bales of {boughtBaleLb}, rounded up to whole bales.',
    source: 'common practice',
  },
  {
    kind: 'lookup',
    shows: 'loadsCount',
    onlyWhen: buys,
    says: '{balesCount} bales at {loadCount} a load, rounded up to whole loads.',
    source: 'common practice',
  },
  {
    kind: 'formula',
    shows: 'perBaleUsd',
    onlyWhen: buys,
    says: 'A bale costs.',
    ways: [
      { when: ({ pricedBy }) => pricedBy === 'bale', formula: String.raw`\q{balePriceUsd}` },
      { formula: String.raw`\frac{\q{priceUsdPerTon} \times \q{boughtBaleLb}}{2000}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'costUsd',
    onlyWhen: buys,
    says: 'Whole bales, and a trip for each load, full or not.',
    ways: [{ formula: String.raw`\q{balesCount} \times \q{perBaleUsd} + \q{loadsCount} \times \q{freightUsdPerLoad}` }],
  },
  {
    kind: 'formula',
    shows: 'fullLoadBalesCount',
    onlyWhen: buys,
    says: 'Where only full loads are sold.',
    ways: [{ formula: String.raw`\q{loadsCount} \times \q{loadCount}` }],
  },
  {
    kind: 'formula',
    shows: 'fullLoadsUsd',
    onlyWhen: buys,
    says: 'And what those cost.',
    ways: [{ formula: String.raw`\q{fullLoadBalesCount} \times \q{perBaleUsd} + \q{loadsCount} \times \q{freightUsdPerLoad}` }],
  },
  {
    kind: 'formula',
    shows: 'deliveredUsdPerTon',
    onlyWhen: buys,
    says: 'A ton at your place, in full loads.',
    ways: [{ formula: String.raw`\frac{2000 (\q{perBaleUsd} + \q{freightUsdPerLoad} / \q{loadCount})}{\q{boughtBaleLb}}` }],
  },
  {
    kind: 'formula',
    shows: 'eatenUsdPerTon',
    onlyWhen: buys,
    says: 'A ton inside the cow, water and losses out.',
    ways: [{ formula: String.raw`\frac{\q{deliveredUsdPerTon}}{\q{eatenRatio}}` }],
  },
  { kind: 'formula', shows: 'herdUsdPerDay', onlyWhen: buys, says: 'A day.', ways: [{ formula: String.raw`\frac{\q{costUsd}}{\q{periodDays}}` }] },
  {
    kind: 'rows',
    of: 'kindCosts',
    onlyWhen: buys,
    says: 'A head a day: the cost shared by what each one eats.',
    formulas: { eachUsdPerDay: String.raw`\frac{\q{costUsd} \times \q{eachLbPerDay}}{\q{dryMatterLb}}` },
  },
  {
    kind: 'formula',
    shows: 'headUsdPerDay',
    onlyWhen: buys,
    says: 'One of the first kind eats {firstLbPerDay}.',
    ways: [{ formula: String.raw`\frac{\q{costUsd} \times \q{firstLbPerDay}}{\q{dryMatterLb}}` }],
  },
];

export const savingsSteps: readonly HayStep[] = [
  {
    kind: 'lookup',
    shows: 'coneLossPercent',
    onlyWhen: savesByFeeder,
    says: 'A cone feeder in the trials.',
    source: 'buskirk-2003, with lalman-feeders',
  },
  {
    kind: 'formula',
    shows: 'coneKeptRatio',
    onlyWhen: savesByFeeder,
    says: 'What it leaves to eat.',
    ways: [
      { when: isDivided, formula: String.raw`1 - \frac{\q{coneLossPercent}}{100}` },
      { formula: String.raw`\frac{1}{1 + \q{coneLossPercent} / 100}`, because: 'the loss put on top, as some sheets do' },
    ],
  },
  {
    kind: 'formula',
    shows: 'coneTimesRatio',
    onlyWhen: savesByFeeder,
    says: 'So each ton goes further by this much.',
    ways: [{ formula: String.raw`\max(\frac{\q{coneKeptRatio}}{\q{feedingKeptRatio}}, 1)` }],
  },
  {
    kind: 'formula',
    shows: 'coneBuyTon',
    onlyWhen: savesByFeeder,
    says: 'And so much would be bought.',
    ways: [
      {
        formula: String.raw`\frac{\max(\q{hayEatenLb} - 2000 \times \min(\q{ownTon}, \frac{\q{hayEatenLb}}{2000 \q{ownEatenRatio} \q{coneTimesRatio}}) \q{ownEatenRatio} \q{coneTimesRatio}, 0)}{2000 \q{eatenRatio} \q{coneTimesRatio}}`,
      },
    ],
  },
  {
    kind: 'formula',
    shows: 'feederSavesTon',
    onlyWhen: savesByFeeder,
    says: 'Saved.',
    ways: [{ formula: String.raw`\max(\q{buyTon} - \q{coneBuyTon}, 0)` }],
  },
  {
    kind: 'formula',
    shows: 'feederSavesUsd',
    onlyWhen: savesByFeeder,
    says: 'In money, at the delivered price.',
    ways: [{ formula: String.raw`\q{feederSavesTon} \times \q{deliveredUsdPerTon}` }],
  },
  {
    kind: 'lookup',
    shows: 'roofLossPercent',
    onlyWhen: savesByRoof,
    says: 'The same months under a roof.',
    source: 'huhnke-bae1716, straight line between its months',
  },
  {
    kind: 'formula',
    shows: 'roofKeptRatio',
    onlyWhen: savesByRoof,
    says: 'What that leaves.',
    ways: [
      { when: isDivided, formula: String.raw`1 - \frac{\q{roofLossPercent}}{100}` },
      { formula: String.raw`\frac{1}{1 + \q{roofLossPercent} / 100}`, because: 'the loss put on top, as some sheets do' },
    ],
  },
  {
    kind: 'formula',
    shows: 'roofSavesTon',
    onlyWhen: savesByRoof,
    says: 'Bought hay saved by it, this one time.',
    ways: [{ formula: String.raw`\max(\q{buyTon} (1 - \frac{\q{storageKeptRatio}}{\q{roofKeptRatio}}), 0)` }],
  },
  {
    kind: 'formula',
    shows: 'roofSavesUsd',
    onlyWhen: savesByRoof,
    says: 'In money, at the delivered price.',
    ways: [{ formula: String.raw`\q{roofSavesTon} \times \q{deliveredUsdPerTon}` }],
  },
];

export const rangeSteps: readonly HayStep[] = [
  {
    kind: 'rows',
    of: 'edges',
    says: 'The same sums if they eat 15 % less or more than the guide says, at the low and the high price. Bales and loads are rounded up.',
    source: 'gross-intake, 13.9 and 16.6 % off',
    formulas: {
      needLb: String.raw`\max(\frac{\q{dryMatterLb} \times \q{guidePercent}}{100} - \q{besideLb}, 0)`,
      edgeOwnTon: String.raw`\min(\q{ownTon}, \frac{\q{needLb}}{2000 \q{ownEatenRatio}})`,
      edgeBuyTon: String.raw`\frac{\max(\q{needLb} - 2000 \q{edgeOwnTon} \q{ownEatenRatio}, 0)}{2000 \q{eatenRatio}}`,
      edgeHaveTon: String.raw`\q{edgeOwnTon} + \q{edgeBuyTon}`,
      edgeCostUsd: String.raw`\q{edgeBalesCount} \q{edgePerBaleUsd} + \q{edgeLoadsCount} \q{freightUsdPerLoad}`,
    },
  },
];
