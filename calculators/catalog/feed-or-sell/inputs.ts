import { choice, date, number, yesNo } from '../../kit/inputs.ts';

const byHay = { dailyCostFrom: 'hay' };
const byYears = { agingFrom: 'years' };

export const inputs = {
  isCalfSold: yesNo('Will a calf of hers be sold before you would buy back?', false, {
    belongsTo: 'management',
    help: 'Asked first, because it can turn the answer by itself. Yes only if the sale falls inside the days below.',
    ask: 'Put your weaning or sale day on a calendar beside the day when you would buy back. Is the sale the earlier one?',
  }),
  weanedPercent: number('Calves weaned for each hundred cows', 'w', 'pct', [0, 250], 88, {
    belongsTo: 'management',
    usual: 'weanedPercent',
    help: 'Used for both answers, with the calf and without it. For ewes or does: lambs or kids weaned for each hundred of them, which may be over 100.',
    ask: 'Calves weaned last year, divided by the cows that were with the bull the year before, times 100. A thin cow in drought may come up open: go lower.',
  }),
  calfWeightLb: number('Weight of a calf when sold', 'W', 'lb', [20, 1500], 500, {
    belongsTo: 'management',
    usual: 'calfLb',
    help: 'For ewes or does: of one lamb or kid.',
    field: 'The mean of your last sale tickets. Calves of a drought year run lighter.',
  }),
  calfPriceUsdPerCwt: number('Price of the calf at that weight', 'p', 'usd/cwt', [0, 2000], 300, {
    usual: 'calfUsdPerCwt',
    help: 'After commission and hauling.',
    ask: 'Ask the sale barn what calves of that weight brought last week, or look at its report.',
    offeredBy: 'prices.calfUsual',
  }),
  keepDays: number('Days until you would buy back', 't', 'd', [1, 1000], 190, {
    step: 5,
    ask: 'In how many weeks will there be grass for her again, if spring is late? Times seven.',
  }),
  saleUsd: number('What she brings today', 'S', 'usd', [0, 20_000], 2200, {
    step: 50,
    usual: 'cowUsd',
    help: 'One cow, as she is now: bred, open or with a calf.',
    field: 'Her weight times the price a pound for culls; for a bred cow, what cows like her brought at the last bred sale.',
    offeredBy: 'prices.cowSale',
  }),
  saleCostsUsd: number('Cost of selling her', 's', 'usd', [0, 5000], 90, {
    usual: 'sellingUsd',
    help: 'Commission, yardage, hauling and shrink. If you know the tax on the sale, add it here.',
  }),
  lowBuyBackUsd: number('Buy-back price, if cows are cheap then', 'B_{low}', 'usd', [50, 20_000], 2500, {
    usual: 'cowUsd',
    help: 'A cow as she would stand then: with a calf at side if she would have one.',
    offeredBy: 'prices.buyBackLow',
  }),
  likelyBuyBackUsd: number('Buy-back price, likely', 'B', 'usd', [50, 20_000], 3000, {
    step: 50,
    usual: 'cowUsd',
    ask: 'What did such cows bring last spring? When a drought breaks over a wide country, everybody buys at once.',
    offeredBy: 'prices.buyBackLikely',
  }),
  highBuyBackUsd: number('Buy-back price, if cows are high then', 'B_{high}', 'usd', [50, 20_000], 3600, {
    usual: 'cowUsd',
    offeredBy: 'prices.buyBackHigh',
  }),
  pricesSeenDay: date('Day when you saw these prices', '2026-11-01', {
    occurs: 'today',
    help: 'It goes into the note. A price is good for a week or two.',
    offeredBy: 'prices.seen',
  }),
  buyBackCostsUsd: number('Cost of buying back', 'b', 'usd', [0, 5000], 90, {
    usual: 'sellingUsd',
    help: 'Hauling, tests, vaccines, and what is lost while new cows settle.',
  }),
  interestPercent: number('Interest that the money would earn or save, a year', 'r', 'pct', [0, 40], 6, {
    usual: 'interestPercent',
    help: 'The rate of the loan that the sale would pay down, or what the bank pays you.',
    offeredBy: 'prices.interest',
  }),
  dailyCostFrom: choice('What it costs to keep her a day', 'hay', {
    options: { hay: 'Work it out from hay', known: 'I know the cost a day' },
    belongsTo: 'management',
    help: 'Only what stops when she is sold. Land, fences and your pickup cost the same either way.',
  }),
  knownCostUsdPerDay: number('Cost of a cow a day', 'c_k', 'usd/d', [0.05, 50], 3, {
    belongsTo: 'management',
    usual: 'cowUsdPerDay',
    shownWhen: { dailyCostFrom: 'known' },
  }),
  hayFedLbPerDay: number('Hay for a cow a day, waste included', 'h', 'lb/d', [1, 100], 34, {
    belongsTo: 'management',
    usual: 'eatenLbPerDay',
    shownWhen: byHay,
    help: 'As fed: what leaves the stack, not what she eats. “Hay needed to bridge a drought” tells what the herd is put out a day: divide it by the cows.',
    ask: 'Weight of a bale, divided by the cows on it and by the days it lasted them.',
  }),
  hayPriceUsdPerTon: number('Price of hay, delivered', 'q', 'usd/ton', [1, 1000], 140, {
    step: 5,
    usual: 'hayUsdPerTon',
    shownWhen: byHay,
    help: 'Your own hay costs what it would sell for.',
    offeredBy: 'prices.hayDelivered',
  }),
  otherUsdPerDay: number('Other costs a cow a day', 'o', 'usd/d', [0, 20], 0.4, {
    belongsTo: 'management',
    shownWhen: byHay,
    help: 'Mineral, supplement, fuel to feed, veterinary bills.',
  }),
  hayOnHandLb: number('Hay on hand', 'F', 'lb', [0, 20_000_000], 57_000, {
    shownWhen: byHay,
    field: 'Count the bales, weigh three, multiply.',
    offeredBy: 'hay.ownLb',
  }),
  agingFrom: choice('Will the cow you buy back be younger?', 'years', {
    options: {
      none: { label: 'No: as old as she would be then', short: 'bought back as old' },
      years: { label: 'Yes: younger by the time between', short: 'bought back younger' },
      known: { label: 'I know what a year costs her', short: 'a year’s cost known' },
    },
    belongsTo: 'management',
    help: 'A cow that is kept grows older. If the one bought is younger, that is worth something.',
  }),
  cowWorthUsd: number('Worth of such a cow for breeding, today', 'V', 'usd', [0, 20_000], 2200, { usual: 'cowUsd', shownWhen: byYears }),
  cullWorthUsd: number('Worth as a cull at the end', 'C', 'usd', [0, 20_000], 1500, { usual: 'cowUsd', shownWhen: byYears }),
  leftYears: number('Years she has left in the herd', 'n_y', 'yr', [0.5, 20], 5, {
    belongsTo: 'management',
    shownWhen: byYears,
    ask: 'How old are your cows when they go? Take her age off that.',
  }),
  knownAgingUsd: number('Worth that she loses in a year', 'a_k', 'usd', [0, 5000], 140, {
    belongsTo: 'management',
    usual: 'sellingUsd',
    shownWhen: { agingFrom: 'known' },
  }),
  deathLossPercent: number('Cows that die in a year', 'm', 'pct', [0, 20], 2, {
    belongsTo: 'management',
    ask: 'Cows dead in the last five years, divided by five, for each hundred.',
  }),
  herdHead: number('Cows in the herd', 'N', 'head', [1, 100_000], 45, { whole: true, offeredBy: 'herd.cows' }),
  sellHead: number('Cows you would sell', 'n', 'head', [0, 100_000], 12, {
    belongsTo: 'management',
    usual: 'herdHead',
    whole: true,
    help: 'It need not be all or none. The old, the open and the ones with bad feet or bags go first.',
  }),
  swingPercent: number('How far off the other numbers may be', 'x', 'pct', [0, 50], 20, {
    help: 'For the list of what the answer depends on. The buy-back price swings from your cheap to your high one.',
  }),
} as const;
