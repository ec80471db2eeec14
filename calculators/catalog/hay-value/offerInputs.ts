import { choice, number, yesNo } from '../../kit/inputs.ts';

const byTon = { pricedBy: 'ton' } as const;
const byBale = { pricedBy: 'bale' } as const;
const withSlip = { slip: 'tested' } as const;

/** The hay that is offered. Which one to buy is a decision, so two offers can stand side by side. */
export const offerInputs = {
  pricedBy: choice('The price is', 'ton', { options: { ton: 'By the ton', bale: 'By the bale' }, belongsTo: 'management' }),
  priceUsdPerTon: number('Price, likely', 'p', 'usd/ton', [0, 3000], 135, {
    belongsTo: 'management',
    usual: 'hayUsdPerTon',
    shownWhen: byTon,
    help: 'At the seller’s gate, as fed. Note the day that you saw it.',
  }),
  lowPriceUsdPerTon: number('Price, low', 'p_l', 'usd/ton', [0, 3000], 110, {
    belongsTo: 'management',
    usual: 'hayUsdPerTon',
    shownWhen: byTon,
    help: 'The least that such hay went for lately.',
  }),
  highPriceUsdPerTon: number('Price, high', 'p_h', 'usd/ton', [0, 3000], 180, { belongsTo: 'management', usual: 'hayUsdPerTon', shownWhen: byTon }),
  balePriceUsd: number('Price of a bale, likely', 'b', 'usd', [0, 2000], 60, {
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
  }),
  isWeighed: yesNo('Was that weight on a scale?', false, {
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
  moisturePercent: number('Water in the hay', 'm', 'pct', [0, 80], 15, {
    belongsTo: 'management',
    usual: 'hayMoisturePercent',
    help: 'Cured hay holds about 15 %, wrapped bales 40 to 60 %.',
    field: 'A hay probe in several bales, or the lab slip: 100 less the dry matter.',
  }),
  slip: choice('Is there a laboratory’s slip for this hay?', 'tested', {
    options: { tested: 'Yes', none: 'No' },
    belongsTo: 'management',
    help: 'Color and smell tell nothing of protein.',
  }),
  slipBasis: choice('Which column of the slip', 'dry', {
    options: { dry: 'Dry matter, “DM” or “100 % dry”', 'as-fed': '“As fed”, “as received”, “as sampled”' },
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
