import { feeders, storages } from '../../model/words.ts';
import { amount, choice, count, day, text } from './field.ts';

const storedLabels = {
  'ground-uncovered': 'On the ground, not covered',
  'raised-uncovered': 'Raised, not covered',
  'ground-covered': 'On the ground, covered',
  'raised-covered': 'Raised and covered',
  roof: 'Under a roof, open sides',
  barn: 'In a barn',
};
export const stackFields = [
  text('name', 'What you call it', { help: 'First cutting, meadow hay.' }),
  count('baleCount', 'Bales', 'count', [0, 100_000], 60),
  day('countedDay', 'Bales counted on', { help: 'What you write down as fed after that day is taken off in every form.' }),
  amount('baleLb', 'Weight of a bale', 'lb', [20, 3000], 1000),
  choice('weighedAt', 'That weight is', ['baling', 'now'], { baling: 'Of the day of baling', now: 'What a bale weighs now' }),
  day('baledDay', 'Baled on'),
  day('weighedDay', 'Weighed on', { shownWhen: ['weighedAt', 'now'] }),
  amount('moisturePercent', 'Water in it', 'pct', [0, 60], 15),
  choice('storedAs', 'Stored', storages, storedLabels),
];
export const boughtFields = [
  amount('hay.bought.baleLb', 'Weight of a bale to buy', 'lb', [20, 3000], 1000),
  amount('hay.bought.moisturePercent', 'Water in bought hay', 'pct', [0, 60], 15),
  choice('hay.bought.storedAs', 'Where you put it', storages, storedLabels),
  count('hay.bought.loadCount', 'Bales in a load', 'count', [1, 500], 34),
  choice('hay.feeder', 'How hay is fed', feeders, {
    cone: 'Cone feeder, bale hangs inside',
    'ring-sheeted': 'Ring with a sheeted bottom',
    'ring-open': 'Open ring',
    trailer: 'Feeding trailer',
    'square-rack': 'Square bales in a rack',
    'round-rack': 'Round bales in a rack',
    'no-rack': 'Bales set out, nothing around them',
    unrolled: 'Unrolled, more than a day of hay at once',
  }),
];
export const priceFields = [
  day('prices.seenDay', 'Seen on'),
  amount('prices.hayLowUsdPerTon', 'Hay, low', 'usd/ton', [1, 2000], 110),
  amount('prices.hayLikelyUsdPerTon', 'Hay, likely', 'usd/ton', [1, 2000], 140, { help: 'At the seller’s gate, as fed. Freight is asked below.' }),
  amount('prices.hayHighUsdPerTon', 'Hay, high', 'usd/ton', [1, 2000], 190),
  amount('prices.freightUsdPerLoad', 'Freight for a load', 'usd/load', [0, 50_000], 400),
  amount('prices.calfEarlyUsdPerCwt', 'Calf, weaned early', 'usd/cwt', [1, 2000], 320),
  amount('prices.calfUsualUsdPerCwt', 'Calf, at the usual weight', 'usd/cwt', [1, 2000], 280),
  amount('prices.cowSaleUsd', 'Cow, sold', 'usd', [1, 50_000], 1500),
  amount('prices.buyBackLowUsd', 'Cow, bought back, low', 'usd', [1, 50_000], 2000),
  amount('prices.buyBackLikelyUsd', 'Cow, bought back, likely', 'usd', [1, 50_000], 2500),
  amount('prices.buyBackHighUsd', 'Cow, bought back, high', 'usd', [1, 50_000], 3200),
  amount('prices.interestPercent', 'Interest', 'pct', [0, 50], 8),
];
