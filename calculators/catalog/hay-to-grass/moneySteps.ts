import { byCase, formula, lookup, tex } from '../../kit/steps.ts';
import { buys, type HayStep, isDivided, savesByFeeder, savesByRoof } from './step.ts';

export const moneySteps: readonly HayStep[] = [
  byCase('boughtBaleLb', {
    onlyWhen: buys,
    says: 'The bale that is bought.',
    source: 'banta-2012, bale size and weight',
    ways: [
      { when: ({ baleFrom }) => baleFrom === 'weighed', formula: tex`\q{baleLb}`, because: 'as weighed' },
      { when: ({ baleFrom }) => baleFrom === 'round', formula: tex`\frac{\pi}{4} \q{diameterFt}^2 \times \q{widthFt} \times \q{densityLbPerFt3}` },
      { formula: tex`\q{lengthFt} \times \q{widthFt} \times \q{heightFt} \times \q{densityLbPerFt3}` },
    ],
  }),
  lookup('balesCount', { onlyWhen: buys, says: '{buyTon} in bales of {boughtBaleLb}, rounded up to whole bales.', source: 'common practice' }),
  lookup('loadsCount', { onlyWhen: buys, says: '{balesCount} bales at {loadCount} a load, rounded up to whole loads.', source: 'common practice' }),
  byCase('perBaleUsd', {
    onlyWhen: buys,
    says: 'A bale costs.',
    ways: [
      { when: ({ pricedBy }) => pricedBy === 'bale', formula: tex`\q{balePriceUsd}` },
      { formula: tex`\frac{\q{priceUsdPerTon} \times \q{boughtBaleLb}}{2000}` },
    ],
  }),
  formula('costUsd', tex`\q{balesCount} \times \q{perBaleUsd} + \q{loadsCount} \times \q{freightUsdPerLoad}`, {
    onlyWhen: buys,
    says: 'Whole bales, and a trip for each load, full or not.',
  }),
  formula('fullLoadBalesCount', tex`\q{loadsCount} \times \q{loadCount}`, { onlyWhen: buys, says: 'Where only full loads are sold.' }),
  formula('fullLoadsUsd', tex`\q{fullLoadBalesCount} \times \q{perBaleUsd} + \q{loadsCount} \times \q{freightUsdPerLoad}`, {
    onlyWhen: buys,
    says: 'And what those cost.',
  }),
  formula('deliveredUsdPerTon', tex`\frac{2000 (\q{perBaleUsd} + \q{freightUsdPerLoad} / \q{loadCount})}{\q{boughtBaleLb}}`, {
    onlyWhen: buys,
    says: 'A ton at your place, in full loads.',
  }),
  formula('eatenUsdPerTon', tex`\frac{\q{deliveredUsdPerTon}}{\q{eatenRatio}}`, {
    onlyWhen: buys,
    says: 'A ton inside the cow, water and losses out.',
  }),
  formula('herdUsdPerDay', tex`\frac{\q{costUsd}}{\q{periodDays}}`, { onlyWhen: buys, says: 'A day.' }),
  {
    kind: 'rows',
    of: 'kindCosts',
    onlyWhen: buys,
    says: 'A head a day: the cost shared by what each one eats.',
    formulas: { eachUsdPerDay: tex`\frac{\q{costUsd} \times \q{eachLbPerDay}}{\q{dryMatterLb}}` },
  },
  formula('headUsdPerDay', tex`\frac{\q{costUsd} \times \q{firstLbPerDay}}{\q{dryMatterLb}}`, {
    onlyWhen: buys,
    says: 'One of the first kind eats {firstLbPerDay}.',
  }),
];

export const savingsSteps: readonly HayStep[] = [
  lookup('coneLossPercent', { onlyWhen: savesByFeeder, says: 'A cone feeder in the trials.', source: 'buskirk-2003, with lalman-feeders' }),
  byCase('coneKeptRatio', {
    onlyWhen: savesByFeeder,
    says: 'What it leaves to eat.',
    ways: [
      { when: isDivided, formula: tex`1 - \frac{\q{coneLossPercent}}{100}` },
      { formula: tex`\frac{1}{1 + \q{coneLossPercent} / 100}`, because: 'the loss put on top, as some sheets do' },
    ],
  }),
  formula('coneTimesRatio', tex`\max(\frac{\q{coneKeptRatio}}{\q{feedingKeptRatio}}, 1)`, {
    onlyWhen: savesByFeeder,
    says: 'So each ton goes further by this much.',
  }),
  formula(
    'coneBuyTon',
    tex`\frac{\max(\q{hayEatenLb} - 2000 \times \min(\q{ownTon}, \frac{\q{hayEatenLb}}{2000 \q{ownEatenRatio} \q{coneTimesRatio}}) \q{ownEatenRatio} \q{coneTimesRatio}, 0)}{2000 \q{eatenRatio} \q{coneTimesRatio}}`,
    { onlyWhen: savesByFeeder, says: 'And so much would be bought.' },
  ),
  formula('feederSavesTon', tex`\max(\q{buyTon} - \q{coneBuyTon}, 0)`, { onlyWhen: savesByFeeder, says: 'Saved.' }),
  formula('feederSavesUsd', tex`\q{feederSavesTon} \times \q{deliveredUsdPerTon}`, {
    onlyWhen: savesByFeeder,
    says: 'In money, at the delivered price.',
  }),
  lookup('roofLossPercent', {
    onlyWhen: savesByRoof,
    says: 'The same months under a roof.',
    source: 'huhnke-bae1716, straight line between its months',
  }),
  byCase('roofKeptRatio', {
    onlyWhen: savesByRoof,
    says: 'What that leaves.',
    ways: [
      { when: isDivided, formula: tex`1 - \frac{\q{roofLossPercent}}{100}` },
      { formula: tex`\frac{1}{1 + \q{roofLossPercent} / 100}`, because: 'the loss put on top, as some sheets do' },
    ],
  }),
  formula('roofSavesTon', tex`\max(\q{buyTon} (1 - \frac{\q{storageKeptRatio}}{\q{roofKeptRatio}}), 0)`, {
    onlyWhen: savesByRoof,
    says: 'Bought hay saved by it, this one time.',
  }),
  formula('roofSavesUsd', tex`\q{roofSavesTon} \times \q{deliveredUsdPerTon}`, { onlyWhen: savesByRoof, says: 'In money, at the delivered price.' }),
];

export const rangeSteps: readonly HayStep[] = [
  {
    kind: 'rows',
    of: 'edges',
    says: 'The same sums if they eat 15 % less or more than the guide says, at the low and the high price. Bales and loads are rounded up.',
    source: 'gross-intake, 13.9 and 16.6 % off',
    formulas: {
      needLb: tex`\max(\frac{\q{dryMatterLb} \times \q{guidePercent}}{100} - \q{besideLb}, 0)`,
      edgeOwnTon: tex`\min(\q{ownTon}, \frac{\q{needLb}}{2000 \q{ownEatenRatio}})`,
      edgeBuyTon: tex`\frac{\max(\q{needLb} - 2000 \q{edgeOwnTon} \q{ownEatenRatio}, 0)}{2000 \q{eatenRatio}}`,
      edgeHaveTon: tex`\q{edgeOwnTon} + \q{edgeBuyTon}`,
      edgeCostUsd: tex`\q{edgeBalesCount} \q{edgePerBaleUsd} + \q{edgeLoadsCount} \q{freightUsdPerLoad}`,
    },
  },
];
