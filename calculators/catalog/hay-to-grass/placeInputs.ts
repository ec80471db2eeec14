import { choice, date, number, yesNo } from '../../kit/inputs.ts';
import { herd } from './stock.ts';

/** Answers that mean that there is hay on hand. */
export const hasHay = ['at-baling', 'now'] as const;

export const placeInputs = {
  fromDay: date('First day on hay', '2026-11-01', { help: 'Today, if they are on hay already.' }),
  toDay: date('Turn-out, first day back on grass', '2027-04-20', {
    ask: 'When was the grass ready in a late spring? After a drought add ten days to two weeks.',
    field: 'Let the height of the grass decide when it comes. This day is for the plan.',
  }),
  herd,
  beside: choice('Other feed in that time', 'none', {
    options: { none: 'Hay alone', standing: 'Some standing feed', daily: 'Some fed every day', both: 'Both' },
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
    help: 'For cattle: about 1 % more feed for each degree below what the coat can stand. For a wet coat some say 2 %.',
  }),
  coat: choice('Coat on those days', 'dry-winter', {
    options: { wet: 'Wet or muddy', 'dry-fall': 'Dry, fall coat', 'dry-winter': 'Dry, winter coat', 'dry-heavy-winter': 'Dry, heavy winter coat' },
    shownWhen: { isColdCounted: 'yes' },
  }),
  coldDays: number('Cold days in that time', 'K', 'd', [0, 400], 30, { shownWhen: { isColdCounted: 'yes' } }),
  feelsLikeF: number('What it feels like on those days', 'T', 'f', [-60, 80], 15, {
    shownWhen: { isColdCounted: 'yes' },
    help: 'Mean of day and night, with the wind counted.',
    ask: 'Use the wind chill of the weather report, or the air temperature behind a good windbreak.',
  }),
  onHand: choice('Hay that you have already', 'at-baling', {
    options: { none: 'None', 'at-baling': 'Yes, weight as it was baled', now: 'Yes, weighed since' },
  }),
  ownCount: number('Bales on hand', 'b', 'count', [0, 100_000], 60, { whole: true, shownWhen: { onHand: hasHay } }),
  ownBaleLb: number('Weight of one of them', 'w', 'lb', [20, 3000], 950, {
    usual: 'baleLb',
    shownWhen: { onHand: hasHay },
    field: 'Three bales on a scale ticket. Most people guess high by a tenth or more.',
  }),
  baledDay: date('Day it was baled', '2026-06-15', { shownWhen: { onHand: hasHay } }),
  weighedDay: date('Day it was weighed', '2026-10-15', { shownWhen: { onHand: 'now' } }),
  moisturePercent: number('Water in the hay', 'm', 'pct', [0, 80], 15, {
    usual: 'hayMoisturePercent',
    help: 'Cured hay holds about 15 %, wrapped bales 40 to 60 %.',
    field: 'A hay probe in several bales, or the lab slip: 100 less the dry matter.',
  }),
  yearlyRain: choice('Rain in a usual year', 'middle', {
    options: { dry: 'Under 25 in', middle: '25 to 40 in', wet: 'Over 40 in' },
    help: 'Hay left outside loses more where it rains more.',
  }),
  pricedBy: choice('Price of the hay to buy', 'ton', {
    options: { ton: 'One price, by the ton', bale: 'One price, by the bale', range: 'Low, likely, high, by the ton' },
  }),
  priceUsdPerTon: number('Price, likely', 'p', 'usd/ton', [0, 3000], 135, {
    usual: 'hayUsdPerTon',
    shownWhen: { pricedBy: ['ton', 'range'] },
    help: 'At the seller’s gate. It depends on the year, the test and the bale: note the day that you saw it.',
  }),
  lowPriceUsdPerTon: number('Price, low', 'p_l', 'usd/ton', [0, 3000], 100, { usual: 'hayUsdPerTon', shownWhen: { pricedBy: 'range' } }),
  highPriceUsdPerTon: number('Price, high', 'p_h', 'usd/ton', [0, 3000], 200, { usual: 'hayUsdPerTon', shownWhen: { pricedBy: 'range' } }),
  balePriceUsd: number('Price of a bale', 'p_b', 'usd', [0, 2000], 65, {
    usual: 'baleUsd',
    shownWhen: { pricedBy: 'bale' },
    help: 'At the seller’s gate. Weigh one before you agree.',
  }),
  freightUsdPerLoad: number('Freight for a load', 'f_L', 'usd/load', [0, 20_000], 400, {
    usual: 'freightUsdPerLoad',
    help: 'A load that is half full costs the same trip. 0 if the price is delivered.',
    ask: 'Loaded miles times the rate for a mile.',
  }),
};
