import { feedingInputs, hayMoisturePercent, spoiledRindIn, storageMethods, storedByTable, yearlyRain } from '../../asks/hay.ts';
import { choice, date, number, type ValuesOf, yesNo } from '../../kit/inputs.ts';
import { herd } from './herd.ts';

/** Answers that mean that there is hay on hand. */
export const hasHay = ['at-baling', 'now'] as const;

export const placeInputs = {
  fromDay: date('First day on hay', '2026-11-01', {
    occurs: { nextFrom: 'today', until: 'toDay' },
    help: 'Today, if they are on hay already.',
    offeredBy: 'season.hayFrom',
  }),
  toDay: date('Turn-out, first day back on grass', '2027-04-20', {
    occurs: { nextFrom: 'fromDay' },
    ask: 'When was the grass ready in a late spring? After a drought add ten days to two weeks.',
    field: 'Let the height of the grass decide when it comes. This day is for the plan.',
    offeredBy: 'season.turnIn',
  }),
  herd,
  beside: choice('Other feed in that time', 'none', {
    options: {
      none: { label: 'Hay alone', short: 'hay alone' },
      standing: { label: 'Some standing feed', short: 'some standing feed' },
      daily: { label: 'Some fed every day', short: 'some fed every day' },
      both: { label: 'Both', short: 'standing and daily feed' },
    },
  }),
  standingLb: number('Standing feed that they will eat', 'F', 'lb', [0, 50_000_000], 20_000, {
    shownWhen: { beside: ['standing', 'both'] },
    help: 'Stockpile, stalks or winter range, water out, after what is trampled and left.',
    ask: 'How many days would it carry them? Days times what the herd eats in a day.',
  }),
  otherFeedLbPerDay: number('Other feed, whole herd', 'G', 'lb/d', [0, 2_000_000], 100, {
    shownWhen: { beside: ['daily', 'both'] },
    help: 'Silage, cubes, grain or straw, water out. It is taken to spare hay pound for pound.',
    ask: 'Pounds as fed times the share that is not water: 0.9 for cubes and grain, about 0.35 for silage.',
  }),
  isColdCounted: yesNo('Count the cold', false, {
    short: ['cold counted', 'cold not counted'],
    help: 'For cattle: about 1 % more feed for each degree below what the coat can stand. For a wet coat some say 2 %.',
  }),
  coat: choice('Coat on those days', 'dry-winter', {
    options: {
      wet: { label: 'Wet or muddy', short: 'wet coats' },
      'dry-fall': { label: 'Dry, fall coat', short: 'fall coats' },
      'dry-winter': { label: 'Dry, winter coat', short: 'winter coats' },
      'dry-heavy-winter': { label: 'Dry, heavy winter coat', short: 'heavy winter coats' },
    },
    shownWhen: { isColdCounted: 'yes' },
  }),
  coldDays: number('Cold days in that time', 'K', 'd', [0, 400], 30, { shownWhen: { isColdCounted: 'yes' } }),
  feelsLikeF: number('What it feels like on those days', 'T', 'f', [-60, 80], 15, {
    shownWhen: { isColdCounted: 'yes' },
    help: 'Mean of day and night, with the wind counted.',
    ask: 'Use the wind chill of the weather report, or the air temperature behind a good windbreak.',
  }),
  onHand: choice('Hay that you have already', 'at-baling', {
    options: {
      none: { label: 'None', short: 'none on hand' },
      'at-baling': { label: 'Yes, weight as it was baled', short: 'weighed as it was baled' },
      now: { label: 'Yes, weighed since', short: 'weighed since' },
    },
    offeredBy: 'hay.onHand',
  }),
  ownCount: number('Bales on hand', 'b', 'count', [0, 100_000], 60, { step: 5, whole: true, shownWhen: { onHand: hasHay }, offeredBy: 'hay.count' }),
  ownBaleLb: number('Weight of one of them', 'w', 'lb', [20, 3000], 950, {
    usual: 'baleLb',
    shownWhen: { onHand: hasHay },
    field: 'Three bales on a scale ticket. Most people guess high by a tenth or more.',
    offeredBy: 'hay.bale',
  }),
  baledDay: date('Day it was baled', '2026-06-15', { occurs: { lastBy: 'fromDay' }, shownWhen: { onHand: hasHay }, offeredBy: 'hay.baled' }),
  weighedDay: date('Day it was weighed', '2026-10-15', { occurs: { lastBy: 'fromDay' }, shownWhen: { onHand: 'now' }, offeredBy: 'hay.weighed' }),
  moisturePercent: hayMoisturePercent('place', 'hay.moisture'),
  yearlyRain: yearlyRain(),
  pricedBy: choice('Price of the hay to buy', 'ton', {
    options: { ton: 'One price, by the ton', bale: 'One price, by the bale', range: 'Low, likely, high, by the ton' },
    offeredBy: 'prices.hayFrom',
  }),
  priceUsdPerTon: number('Price, likely', 'p', 'usd/ton', [0, 3000], 135, {
    usual: 'hayUsdPerTon',
    shownWhen: { pricedBy: ['ton', 'range'] },
    help: 'At the seller’s gate. It depends on the year, the test and the bale: note the day that you saw it.',
    offeredBy: 'prices.hayLikely',
  }),
  lowPriceUsdPerTon: number('Price, low', 'p_l', 'usd/ton', [0, 3000], 100, {
    usual: 'hayUsdPerTon',
    shownWhen: { pricedBy: 'range' },
    offeredBy: 'prices.hayLow',
  }),
  highPriceUsdPerTon: number('Price, high', 'p_h', 'usd/ton', [0, 3000], 200, {
    usual: 'hayUsdPerTon',
    shownWhen: { pricedBy: 'range' },
    offeredBy: 'prices.hayHigh',
  }),
  balePriceUsd: number('Price of a bale', 'p_b', 'usd', [0, 2000], 65, {
    usual: 'baleUsd',
    shownWhen: { pricedBy: 'bale' },
    help: 'At the seller’s gate. Weigh one before you agree.',
  }),
  freightUsdPerLoad: number('Freight for a load', 'f_L', 'usd/load', [0, 20_000], 400, {
    usual: 'freightUsdPerLoad',
    help: 'A load that is half full costs the same trip. 0 if the price is delivered.',
    ask: 'Loaded miles times the rate for a mile.',
    offeredBy: 'prices.freight',
  }),
};

const known = { label: 'I know my own loss', short: 'with a known loss' } as const;

export const managementInputs = {
  ownStorage: choice('How the hay on hand is stored', 'barn', {
    options: { ...storageMethods, rind: { label: 'I cut one open and measured the rind', short: 'with the rind measured' }, known },
    belongsTo: 'management',
    shownWhen: { onHand: hasHay },
    offeredBy: 'hay.storage',
  }),
  knownOwnPercent: number('Loss of the hay on hand, still to come', 's_o', 'pct', [0, 90], 5, {
    belongsTo: 'management',
    shownWhen: { onHand: hasHay, ownStorage: 'known' },
  }),
  rindIn: spoiledRindIn({ onHand: hasHay, ownStorage: 'rind' }),
  ownDiameterFt: number('Diameter of those bales', 'D_o', 'ft', [3, 7], 5, {
    belongsTo: 'management',
    shownWhen: { onHand: hasHay, ownStorage: 'rind' },
  }),
  storage: choice('How the bought hay is stored', 'ground-uncovered', {
    options: { ...storageMethods, known },
    belongsTo: 'management',
    offeredBy: 'hay.boughtStorage',
  }),
  knownStoragePercent: number('Lost in storage, of what was stacked', 's_k', 'pct', [0, 90], 10, {
    belongsTo: 'management',
    shownWhen: { storage: 'known' },
  }),
  storedFrom: choice('How long it stands, on average', 'half', {
    options: {
      half: { label: 'Half of the days on hay', short: 'half of the days' },
      months: { label: 'I give the months', short: 'by the months' },
    },
    belongsTo: 'management',
    shownWhen: { storage: storedByTable },
    help: 'Hay that is fed down evenly stands half of the time on average.',
  }),
  storedMonths: number('Months in storage, on average', 'M_s', 'mo', [0, 18], 4, {
    belongsTo: 'management',
    shownWhen: { storage: storedByTable, storedFrom: 'months' },
    ask: 'Which month was it stacked, and which is the middle of feeding?',
  }),
  ...feedingInputs,
  baleFrom: choice('Bales to buy', 'weighed', {
    options: { weighed: 'I know what one weighs', round: 'Round, by size', square: 'Square, by size' },
    belongsTo: 'management',
  }),
  baleLb: number('Weight of a bale to buy', 'w_k', 'lb', [20, 3000], 1000, {
    belongsTo: 'management',
    usual: 'baleLb',
    shownWhen: { baleFrom: 'weighed' },
    field: 'Three of the seller’s bales on a scale ticket. Most people guess high by a tenth or more.',
    offeredBy: 'hay.boughtBale',
  }),
  widthFt: number('Width', 'c', 'ft', [1, 6], 4, {
    belongsTo: 'management',
    shownWhen: { baleFrom: ['round', 'square'] },
    help: 'The first number of a size: a 4x5 is 4 ft wide.',
  }),
  diameterFt: number('Diameter', 'D', 'ft', [2, 7], 5, { belongsTo: 'management', shownWhen: { baleFrom: 'round' } }),
  heightFt: number('Height', 'h', 'ft', [1, 6], 3, { belongsTo: 'management', shownWhen: { baleFrom: 'square' } }),
  lengthFt: number('Length', 'l', 'ft', [2, 10], 8, { belongsTo: 'management', shownWhen: { baleFrom: 'square' } }),
  densityLbPerFt3: number('How tight they are', 'd_b', 'lb/cuft', [4, 40], 10, {
    belongsTo: 'management',
    usual: 'baleDensityLbPerFt3',
    shownWhen: { baleFrom: ['round', 'square'] },
    help: 'Round bales: 9 soft, 11 usual, 12 tight. Large squares run tighter.',
  }),
  loadCount: number('Bales in a load', 'L', 'count', [1, 2000], 34, {
    belongsTo: 'management',
    whole: true,
    ask: 'Ask the trucker. The legal weight or the width is the limit, whichever comes first.',
    offeredBy: 'hay.load',
  }),
};

export const inputs = {
  ...placeInputs,
  ...managementInputs,
  lossConvention: choice('How losses are put on', 'divide', {
    options: {
      divide: { label: 'Need ÷ (1 − loss)', short: 'need ÷ (1 − loss)' },
      multiply: { label: 'Need × (1 + loss)', short: 'need × (1 + loss)' },
    },
    convention: true,
    help: 'Some sheets multiply the need by one plus the loss. That buys too little.',
  }),
  wetCoatRule: choice('More feed for a wet coat, each degree below 59 °F', 'two', {
    options: {
      one: { label: '1 %, as for a dry coat (South Dakota 2020, Oklahoma 2025)', short: '1 % for a wet coat' },
      two: { label: '2 % (older advice from Oklahoma, Kansas 2025)', short: '2 % for a wet coat' },
    },
    convention: true,
    shownWhen: { isColdCounted: 'yes', coat: 'wet' },
    since: { version: 2, before: 'one' },
    help: 'Universities differ, and two have printed both. The higher figure leads; it is more than a cow can eat on the day, so it must be spread over the days after.',
  }),
};

export type Values = ValuesOf<typeof inputs>;
