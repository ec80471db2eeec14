import { feedingInputs, hayMoisturePercent, spoiledRindIn, storageMethods, storedByTable, yearlyRain } from '../../asks/hay.ts';
import { choice, number, type ValuesOf, yesNo } from '../../kit/inputs.ts';

const byTon = { pricedBy: 'ton' } as const;
const byBale = { pricedBy: 'bale' } as const;
const withSlip = { slip: 'tested' } as const;

/** The hay that is offered. Which one to buy is a decision, so two offers can stand side by side. */
export const offerInputs = {
  pricedBy: choice('The price is', 'ton', { options: { ton: 'By the ton', bale: 'By the bale' }, belongsTo: 'management' }),
  priceUsdPerTon: number('Price, likely', 'p', 'usd/ton', [0, 3000], 135, {
    step: 5,
    belongsTo: 'management',
    usual: 'hayUsdPerTon',
    shownWhen: byTon,
    help: 'At the seller’s gate, as fed. Note the day that you saw it.',
    offeredBy: 'prices.hayLikely',
  }),
  lowPriceUsdPerTon: number('Price, low', 'p_l', 'usd/ton', [0, 3000], 110, {
    belongsTo: 'management',
    usual: 'hayUsdPerTon',
    shownWhen: byTon,
    help: 'The least that such hay went for lately.',
    offeredBy: 'prices.hayLow',
  }),
  highPriceUsdPerTon: number('Price, high', 'p_h', 'usd/ton', [0, 3000], 180, {
    belongsTo: 'management',
    usual: 'hayUsdPerTon',
    shownWhen: byTon,
    offeredBy: 'prices.hayHigh',
  }),
  balePriceUsd: number('Price of a bale, likely', 'b', 'usd', [0, 2000], 60, {
    step: 5,
    belongsTo: 'management',
    usual: 'baleUsd',
    shownWhen: byBale,
    help: 'At the seller’s gate.',
  }),
  lowBalePriceUsd: number('Price of a bale, low', 'b_l', 'usd', [0, 2000], 50, { belongsTo: 'management', usual: 'baleUsd', shownWhen: byBale }),
  highBalePriceUsd: number('Price of a bale, high', 'b_h', 'usd', [0, 2000], 80, { belongsTo: 'management', usual: 'baleUsd', shownWhen: byBale }),
  baleLb: number('Weight of a bale', 'W', 'lb', [20, 3000], 1000, {
    belongsTo: 'management',
    usual: 'baleLb',
    shownWhen: byBale,
    field: 'Three bales on a scale ticket.',
    offeredBy: 'hay.boughtBale',
  }),
  isWeighed: yesNo('Was that weight on a scale?', false, {
    short: ['weighed', 'not weighed'],
    belongsTo: 'management',
    shownWhen: byBale,
    help: 'Guesses run high, by a tenth and more.',
  }),
  freightUsdPerTon: number('Freight', 'h', 'usd/ton', [0, 1000], 20, {
    belongsTo: 'management',
    usual: 'freightUsdPerTon',
    help: '0 if the price is delivered.',
    ask: 'What does the trucker want for a load, and how many tons are on it? Divide.',
  }),
  moisturePercent: hayMoisturePercent('management', 'hay.boughtMoisture'),
  slip: choice('Is there a laboratory’s slip for this hay?', 'tested', {
    options: { tested: { label: 'Yes', short: 'tested' }, none: { label: 'No', short: 'not tested' } },
    belongsTo: 'management',
    help: 'Color and smell tell nothing of protein.',
  }),
  slipBasis: choice('Which column of the slip', 'dry', {
    options: {
      dry: { label: 'Dry matter, “DM” or “100 % dry”', short: 'of dry matter' },
      'as-fed': { label: '“As fed”, “as received”, “as sampled”', short: 'as fed' },
    },
    belongsTo: 'management',
    shownWhen: withSlip,
    help: 'Most slips print both. Copy the words.',
  }),
  proteinPercent: number('Crude protein', 'c', 'pct', [1, 40], 9, { belongsTo: 'management', usual: 'hayProteinPercent', shownWhen: withSlip }),
  tdnPercent: number('Energy (TDN, total digestible nutrients)', 'u', 'pct', [10, 95], 54, {
    belongsTo: 'management',
    usual: 'hayTdnPercent',
    shownWhen: withSlip,
  }),
};

const rind = { storage: 'rind' } as const;
const compared = { against: ['protein', 'tdn'] } as const;

export const lossInputs = {
  storage: choice('How it is stored', 'ground-uncovered', {
    options: {
      ...storageMethods,
      rind: { label: 'I cut one open and measured the rind', short: 'with the rind measured' },
      known: { label: 'I know my own loss', short: 'with a known loss' },
    },
    belongsTo: 'management',
    offeredBy: 'hay.boughtStorage',
  }),
  storedMonths: number('Months in storage, on average', 'M', 'mo', [0, 18], 6, {
    belongsTo: 'management',
    shownWhen: { storage: storedByTable },
    help: 'Hay that is fed down evenly stands half of the feeding time on average.',
    ask: 'Which month was it stacked, and which is the middle of feeding?',
  }),
  yearlyRain: yearlyRain({ shownWhen: { storage: storedByTable } }),
  rindIn: spoiledRindIn(rind),
  diameterFt: number('Bale, across', 'D', 'ft', [3, 7], 5, { belongsTo: 'management', shownWhen: rind }),
  ends: choice('Flat ends', 'sound', {
    options: {
      sound: { label: 'Sound: bales stood end to end', short: 'sound ends' },
      spoiled: { label: 'Spoiled as deep as the side', short: 'spoiled ends' },
    },
    belongsTo: 'management',
    shownWhen: rind,
  }),
  widthFt: number('Bale, wide', 'w', 'ft', [3, 7], 5, { belongsTo: 'management', shownWhen: { ...rind, ends: 'spoiled' } }),
  knownStoragePercent: number('Lost in storage, of what was stacked', 's_k', 'pct', [0, 90], 10, {
    belongsTo: 'management',
    shownWhen: { storage: 'known' },
    ask: 'Cut a bale open, measure the spoiled rind, and choose that above.',
  }),
  ...feedingInputs,
  against: choice('Set it against another feed?', 'none', {
    options: {
      none: { label: 'No', short: 'none' },
      protein: { label: 'Yes, by protein', short: 'set beside by protein' },
      tdn: { label: 'Yes, by energy (TDN)', short: 'set beside by TDN' },
    },
    help: 'By what your stock are short of. Then the answer says what this hay is worth beside that feed.',
  }),
  otherPriceUsdPerTon: number('Price of the other feed, delivered', 'p_o', 'usd/ton', [1, 5000], 300, {
    usual: 'feedUsdPerTon',
    shownWhen: compared,
  }),
  otherMoisturePercent: number('Water in it', 'm_o', 'pct', [0, 90], 10, { shownWhen: compared }),
  otherProteinPercent: number('Crude protein in it, of dry matter', 'c_o', 'pct', [1, 95], 30, {
    shownWhen: { against: 'protein' },
    help: 'A tag prints it as fed: divide by the dry part, 0.90 where 10 % is water.',
  }),
  otherTdnPercent: number('TDN in it, of dry matter', 'u_o', 'pct', [10, 95], 85, {
    shownWhen: { against: 'tdn' },
    help: 'From its slip, or ask the mill.',
  }),
  otherLossPercent: number('Lost of it before it is eaten', 'x_o', 'pct', [0, 60], 5, { shownWhen: compared }),
  lossConvention: choice('How losses are put on the price', 'divide', {
    options: {
      divide: { label: 'Price ÷ (1 − loss)', short: 'price ÷ (1 − loss)' },
      multiply: { label: 'Price × (1 + loss)', short: 'price × (1 + loss)' },
    },
    convention: true,
    help: 'Some sheets multiply the price by one plus the loss. That charges the loss too low.',
  }),
};

export const inputs = { ...offerInputs, ...lossInputs };

export type Values = ValuesOf<typeof inputs>;
