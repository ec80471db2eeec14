import { choice, number, type ValuesOf } from '../../kit/inputs.ts';

const fed = ['bought-feed', 'own-feed'];

export const inputs = {
  pairsHead: number('Cows with calves', 'N', 'head', [1, 20_000], 45, { whole: true, offeredBy: 'herd.cows' }),
  cowWeightLb: number('Weight of a cow', 'W', 'lb', [600, 2200], 1250, {
    usual: 'cowLb',
    ask: 'The mean of your cull tickets. Guesses run light.',
    offeredBy: 'herd.cowWeight',
  }),
  intakeFrom: choice('How good is what she grazes?', 'average', {
    options: {
      low: { label: 'Low: brown, stemmy, weathered', short: 'on poor forage' },
      average: { label: 'Average', short: 'on average forage' },
      high: { label: 'High: green and leafy', short: 'on green leafy forage' },
      own: { label: 'I have my own figures', short: 'own figures for appetite' },
    },
    help: 'Sets what a nursing and a dry cow eat, from published guides.',
    ask: 'Brown and stemmy is low, green with some stem is average, leafy and growing is high.',
  }),
  milkingPercent: number('A nursing cow eats a day, share of her weight', 'm_o', 'pct', [1, 5], 2.5, {
    help: 'Dry matter: the water out.',
    shownWhen: { intakeFrom: 'own' },
  }),
  dryPercent: number('A dry cow eats a day, share of her weight', 'd_o', 'pct', [1, 5], 2.2, { shownWhen: { intakeFrom: 'own' } }),
  ageDays: number('Age of the calves when weaned early', 'a', 'd', [1, 300], 125, {
    step: 5,
    belongsTo: 'management',
    help: 'The youngest that would go; a calf under six weeks needs milk.',
    offeredBy: 'herd.calfAge',
  }),
  aheadDays: number('Days before the usual weaning', 't', 'd', [1, 240], 84, { belongsTo: 'management' }),
  earlyWeightLb: number('What a calf weighs then', 'w_1', 'lb', [80, 900], 330, {
    belongsTo: 'management',
    usual: 'earlyCalfLb',
    ask: 'Run ten across a scale. Or birth weight and 2 lb (0.9 kg) for each day of age, less in a drought.',
  }),
  usualWeightLb: number('What it would weigh at the usual weaning', 'w_2', 'lb', [100, 1000], 500, {
    belongsTo: 'management',
    usual: 'calfLb',
    help: 'This year, on this grass. A drought calf comes in lighter than last year’s ticket.',
  }),
  calfForageFrom: choice('Grass that the calf eats beside milk', 'by-weight', {
    options: {
      'by-weight': { label: 'Work it out from its weight and age', short: 'grass by its weight' },
      own: { label: 'I have my own figure', short: 'own figure for its grass' },
    },
  }),
  ownCalfLbPerDay: number('Grass the calf eats, dry matter', 'f_o', 'lb/d', [0, 20], 6, { shownWhen: { calfForageFrom: 'own' } }),
  calfGoes: choice('Where will the calf eat then?', 'sold', {
    options: { sold: 'Nowhere here: it is sold', 'bought-feed': 'Here, on bought feed', 'own-feed': 'Here, on grass or hay of this place' },
    belongsTo: 'management',
    help: 'The calf’s part is saved only on the ground that it leaves.',
  }),
  calfNeedPercent: number('A weaned calf eats a day, share of its weight', 'n', 'pct', [1, 5], 3, {
    belongsTo: 'management',
    help: 'Dry matter. Without milk it eats about twice the grass that it ate beside her.',
    shownWhen: { calfGoes: fed },
  }),
  fedGainLbPerDay: number('Gain of the calf on that feed', 'g', 'lb/d', [0, 4], 1.8, {
    belongsTo: 'management',
    usual: 'gainLbPerDay',
    help: 'On dry grass alone it may be next to nothing.',
    shownWhen: { calfGoes: fed },
  }),
  earlyPriceUsdPerCwt: number('Quote for the weight now', 'p_1', 'usd/cwt', [0, 1500], 300, {
    step: 5,
    usual: 'calfUsdPerCwt',
    help: 'An example, not a market. Take both quotes from one sale on one day.',
    field: 'The sale barn’s report, your weight class, your kind of calf.',
    offeredBy: 'prices.calfEarly',
  }),
  usualPriceUsdPerCwt: number('Quote for the usual weight, same day', 'p_2', 'usd/cwt', [0, 1500], 260, {
    step: 5,
    usual: 'calfUsdPerCwt',
    offeredBy: 'prices.calfUsual',
  }),
  movePercent: number('How far the market may move until then, either way', 'z', 'pct', [0, 60], 10, {
    help: 'In a drought that many share it falls more often than it rises.',
  }),
  forageUsdPerTon: number('What a ton of forage is worth to you this year, dry matter', 'p_f', 'usd/ton', [0, 1000], 110, {
    usual: 'hayUsdPerTon',
    ask: 'What the hay costs, delivered, that you would buy in its place, divided by the share that is dry and by the share that is eaten. $140 hay with 15 % water, a fifth of it wasted, comes to about $206.',
    offeredBy: 'prices.hayDry',
  }),
  calfFeedUsdPerTon: number('Price of the calf’s bought feed, dry matter', 'p_c', 'usd/ton', [0, 2000], 290, {
    belongsTo: 'management',
    usual: 'feedUsdPerTon',
    shownWhen: { calfGoes: 'bought-feed' },
  }),
  careUsdPerDay: number('Care of a calf: labor, bedding, mineral', 'k', 'usd/d', [0, 20], 0.35, {
    belongsTo: 'management',
    shownWhen: { calfGoes: fed },
  }),
  weaningCostUsd: number('Cost of weaning early: vaccine, pen, sickness, deaths, a calf', 'C', 'usd', [0, 1000], 25, {
    belongsTo: 'management',
    usual: 'sellingUsd',
  }),
  interestPercent: number('Interest on money in hand early, a year', 'r', 'pct', [0, 40], 7, {
    usual: 'interestPercent',
    help: 'What your operating note costs.',
    offeredBy: 'prices.interest',
  }),
};

export type Values = ValuesOf<typeof inputs>;
