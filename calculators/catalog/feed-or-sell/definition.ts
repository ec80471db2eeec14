import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shown } from '../../kit/shown.ts';
import { byCase, formula, lookup, tex } from '../../kit/steps.ts';
import { compute } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';
import { evenSteps } from './steps.ts';

const jones = 'jones-keep-or-sell-2011, factors to consider';

export default defineCalculator({
  slug: 'feed-or-sell',
  version: 1,
  title: 'Keep and feed, or sell and buy back',
  inputs,
  refusals: [
    {
      at: 'saleCostsUsd',
      when: ({ saleUsd, saleCostsUsd }) => saleCostsUsd > saleUsd,
      say: 'Selling her would cost more than she brings. Put in the costs of one cow, not of the load.',
    },
    {
      at: 'likelyBuyBackUsd',
      when: ({ lowBuyBackUsd, likelyBuyBackUsd }) => likelyBuyBackUsd < lowBuyBackUsd,
      say: 'The likely buy-back price is under the cheap one, which may still be the example’s. Put the three in order: cheap, likely, high.',
    },
    {
      at: 'highBuyBackUsd',
      when: ({ likelyBuyBackUsd, highBuyBackUsd }) => highBuyBackUsd < likelyBuyBackUsd,
      say: 'The high buy-back price is under the likely one. It may still be the example’s: put in what such cows would bring if they are high then.',
    },
    {
      at: 'cullWorthUsd',
      when: ({ agingFrom, cowWorthUsd, cullWorthUsd }) => agingFrom === 'years' && cullWorthUsd > cowWorthUsd,
      say: 'As a cull she would be worth more than as a breeding cow today. Then growing older costs nothing: choose “as old as she would be then”.',
    },
    {
      at: 'sellHead',
      when: ({ herdHead, sellHead }) => sellHead > herdHead,
      say: 'That is more cows than are in the herd. Sell at most all of them.',
    },
  ],
  compute,
}).describe({
  question: 'Feed or sell?',
  lead: 'What it costs to feed a cow through, against selling her now and buying one back; for a ewe or a doe the sum is the same. The first question is the calf, lamb or kid: it can turn the answer alone.',
  searchWords:
    'drought destocking, sell cows or buy hay, keep or sell cows, buy back cows, sell ewes or buy hay, keep or sell does, culling in drought, break-even hay price, partial herd liquidation, replacement cost',
  first: ['isCalfSold', 'saleUsd', 'likelyBuyBackUsd', ['hayPriceUsdPerTon', 'knownCostUsdPerDay'], 'keepDays'],
  groups: [
    {
      title: 'The calf',
      inputs: ['weanedPercent', 'calfWeightLb', 'calfPriceUsdPerCwt'],
      summary: '{weanedPercent} weaned, {calfWeightLb} when sold, {calfPriceUsdPerCwt}',
    },
    {
      title: 'Selling and buying back',
      inputs: ['saleCostsUsd', 'lowBuyBackUsd', 'highBuyBackUsd', 'buyBackCostsUsd', 'interestPercent', 'pricesSeenDay'],
      summary: 'bought back at {lowBuyBackUsd} to {highBuyBackUsd}, {saleCostsUsd} to sell, {buyBackCostsUsd} to buy, interest {interestPercent}',
    },
    {
      title: 'What keeping her costs',
      inputs: ['dailyCostFrom', 'hayFedLbPerDay', 'otherUsdPerDay', 'hayOnHandLb', 'deathLossPercent'],
      summary: '{hayFedLbPerDay} of hay, {hayOnHandLb} on hand, {deathLossPercent} die in a year',
    },
    {
      title: 'Her age',
      inputs: ['agingFrom', 'cowWorthUsd', 'cullWorthUsd', 'leftYears', 'knownAgingUsd'],
      summary: '{agingFrom}, {cowWorthUsd} for breeding, {cullWorthUsd} as a cull, {leftYears} left, {knownAgingUsd} lost in a year',
    },
    {
      title: 'The herd',
      inputs: ['herdHead', 'sellHead', 'swingPercent'],
      summary: '{#herdHead} cows, {#sellHead} to sell, other numbers off by {swingPercent}',
    },
  ],
  handout: ['verdict', 'keepAdvantageUsd', 'keepingUsd', 'rebuyingUsd', 'evenBuyBackUsd', 'evenHayUsdPerTon'],
  quantities,
  results: [
    ranged('verdict', ['lowAdvantageUsd', 'highAdvantageUsd'], {
      says: 'Keeping a cow saves {low} if cows are cheap when you buy back, {high} if they are high. Minus means that selling saves.',
      short: '{low} to {high} saved by keeping a cow',
      said: 'by these numbers',
    }),
    { of: 'keepAdvantageUsd', gap: ['less saved by keeping', 'more saved by keeping'] },
    shown('withCalfUsd', 'withoutCalfUsd', 'keepingUsd', 'rebuyingUsd'),
    { of: 'evenDays', when: ({ evenDays }) => evenDays > 0 },
    { of: 'evenBuyBackUsd', when: ({ evenBuyBackUsd }) => evenBuyBackUsd > 0 },
    { of: 'evenCostUsdPerDay', when: ({ evenCostUsdPerDay }) => evenCostUsdPerDay > 0 },
    { of: 'evenHayUsdPerTon', when: ({ dailyCostFrom, evenHayUsdPerTon }) => dailyCostFrom === 'hay' && evenHayUsdPerTon > 0 },
    { of: 'fedHead', when: ({ dailyCostFrom }) => dailyCostFrom === 'hay' },
    shown('soldPercent', 'planCostUsd', 'planSavedUsd', 'swings', 'byPrice'),
  ],
  steps: [
    formula('calfUsd', tex`\frac{\q{weanedPercent}}{100} \times \q{calfWeightLb} \times \frac{\q{calfPriceUsdPerCwt}}{100}`, {
      says: 'What a calf is worth to one cow: not every cow weans one.',
      source: 'gessner-2016, example herd',
    }),
    byCase('countedCalfUsd', {
      says: 'The line that turns the answer.',
      source: 'common practice',
      ways: [
        { when: ({ isCalfSold }) => isCalfSold, formula: tex`\q{calfUsd}`, because: 'a calf is sold before you would buy back' },
        { formula: '0', because: 'no calf is sold before you would buy back' },
      ],
    }),
    byCase('dailyCostUsdPerDay', {
      says: 'What she costs a day.',
      source: jones,
      ways: [
        { when: ({ dailyCostFrom }) => dailyCostFrom === 'known', formula: tex`\q{knownCostUsdPerDay}` },
        { formula: tex`\frac{\q{hayFedLbPerDay} \times \q{hayPriceUsdPerTon}}{2000} + \q{otherUsdPerDay}` },
      ],
    }),
    byCase('agingUsd', {
      says: 'What a year of growing older takes off her, in a straight line to her worth as a cull.',
      source: 'common practice',
      ways: [
        { when: ({ agingFrom }) => agingFrom === 'none', formula: '0', because: 'the cow bought back would be as old' },
        { when: ({ agingFrom }) => agingFrom === 'known', formula: tex`\q{knownAgingUsd}` },
        { formula: tex`\frac{\q{cowWorthUsd} - \q{cullWorthUsd}}{\q{leftYears}}` },
      ],
    }),
    formula('feedingUsd', tex`\q{dailyCostUsdPerDay} \times \q{keepDays}`, { says: 'Keeping: feed and care.', source: jones }),
    formula('olderUsd', tex`\frac{\q{agingUsd} \times \q{keepDays}}{365}`, { says: 'Keeping: older.' }),
    formula('lossUsd', tex`\q{likelyBuyBackUsd} \times \frac{\q{deathLossPercent}}{100} \times \frac{\q{keepDays}}{365}`, {
      says: 'Keeping: some die, and must be bought anyway.',
    }),
    formula('keepingUsd', tex`\q{feedingUsd} + \q{olderUsd} + \q{lossUsd} - \q{countedCalfUsd}`, {
      says: 'Cost of keeping, less the calf. Minus means that the calf more than pays for it.',
      source: jones,
    }),
    formula('netSaleUsd', tex`\q{saleUsd} - \q{saleCostsUsd}`, { says: 'Selling: the money that comes home.' }),
    formula('interestUsd', tex`\q{netSaleUsd} \times \frac{\q{interestPercent}}{100} \times \frac{\q{keepDays}}{365}`, {
      says: 'Selling: what that money earns or saves meanwhile.',
      source: jones,
    }),
    formula('rebuyingUsd', tex`\q{likelyBuyBackUsd} + \q{buyBackCostsUsd} - \q{netSaleUsd} - \q{interestUsd}`, {
      says: 'Cost of selling and buying back at the likely price.',
      source: jones,
    }),
    formula('keepAdvantageUsd', tex`\q{rebuyingUsd} - \q{keepingUsd}`, { says: 'One against the other.' }),
    ...(
      [
        ['lowAdvantageUsd', 'lowBuyBackUsd', 'The same if cows are cheap then: the price changes, and with it what the dead ones cost.'],
        ['highAdvantageUsd', 'highBuyBackUsd', 'The same if cows are high then.'],
      ] as const
    ).map(([shows, price, says]) => ({
      kind: 'formula' as const,
      shows,
      says,
      ways: [
        {
          formula: tex`\q{keepAdvantageUsd} + (\q{${price}} - \q{likelyBuyBackUsd}) \times (1 - \frac{\q{deathLossPercent}}{100} \times \frac{\q{keepDays}}{365})`,
        },
      ] as const,
    })),
    lookup('verdict', {
      says: 'If keeping saves even when cows are cheap, keep. If selling saves even when they are high, sell. Between, it depends on the price.',
      source: 'common practice',
    }),
    formula('withoutCalfUsd', tex`\q{keepAdvantageUsd} - \q{countedCalfUsd}`, { says: 'The answer without a calf.' }),
    formula('withCalfUsd', tex`\q{withoutCalfUsd} + \q{calfUsd}`, { says: 'The answer with one.' }),
    ...evenSteps,
  ],
  cautions: [
    caution(({ calfTurnsIt }) => calfTurnsIt === 'yes', {
      lead: 'The calf alone turns this answer. Make sure of the sale day.',
      say: 'The calf alone turns this answer. Make sure of the sale day, and that she is bred and will wean it, before you go by the number.',
      source: 'common practice',
    }),
    caution(({ isCalfSold, evenDays, keepDays }) => isCalfSold && evenDays > 0 && evenDays < keepDays, {
      lead: 'The days where both cost the same come before the buy-back.',
      say: 'The days where both cost the same come before the day you would buy back. They count the calf only if it is sold by then.',
      source: 'common practice',
    }),
    caution(({ evenDays }) => evenDays <= 0, {
      lead: 'Selling wins from the first day. That is rare: check both prices.',
      say: 'Selling wins from the first day here: she brings at least what a cow costs back. Look again at both prices; that is rare, and it may not be the same cow.',
      source: 'common practice',
    }),
    caution(({ sellHead }) => sellHead > 0, {
      lead: 'Before a cow goes on the truck: past drug withdrawal, fit for the haul?',
      say: 'Before a cow goes on the truck: is she past the withdrawal time of every drug she had, and fit for the haul? A cow that is too thin or lame to walk on by herself is not hauled; call your veterinarian.',
      source: 'common practice',
    }),
    caution(({ sellHead }) => sellHead > 0, {
      lead: 'Cows bought back can bring disease home. Keep them apart at first.',
      say: 'Cows bought back can bring disease and weeds home. Ask your veterinarian about tests, and keep them apart at first.',
      source: 'common practice',
    }),
  ],
  limits: [
    'Its words and its example are for cows. For ewes or does put in their own figures everywhere, and read lamb or kid for calf: one of the example’s left standing spoils the answer.',
    'Tax is left out unless you put it with the cost of selling. A drought sale can push a year’s income up; some tax laws let you put it off. Ask whoever does your taxes before you sell.',
    'It takes one cow for another. Cows that know your ground, your bulls’ daughters and years of culling can’t be bought back; nor can poor ones be worth the feed because the mean cow is.',
    'Nobody knows the buy-back price. That is why there are three. Drought over a wide country makes cattle cheap all at once and high all at once.',
    'It asks what costs more, not whether the cash or the hay lasts, nor what the grass bears. Stock kept on short grass cost next year’s grass too, and that is not in here.',
    'A cow that you keep may come up open or lose her calf; the price of a pair has that risk behind it. Where you would buy back pairs, this leans a little toward keeping.',
    'The list of swings moves one number at a time. Things that go wrong together are worse than any line of it.',
    'It is money, and it is not only money. If it keeps you up at night, call someone today: the lines to call stand under the answer and on the printed sheet.',
  ],
  weighsOnPeople: true,
  note: ({ verdict, isCalfSold, keepAdvantageUsd, evenBuyBackUsd, keepingUsd, rebuyingUsd }, show) => {
    const even = evenBuyBackUsd > 0 ? `; both the same at a buy-back of ${show('evenBuyBackUsd')}` : '';
    const answer = verdict === 'keep' ? 'keep' : verdict === 'sell' ? 'sell and buy back' : 'it depends on the buy-back price';
    const likely = keepAdvantageUsd < 0 ? 'selling saves at the likely price' : 'keeping saves at the likely price';
    return `Feed or sell, ${show('keepDays')}: ${answer}; ${likely} (keeping a cow costs ${show('keepingUsd')}, selling and buying back ${show('rebuyingUsd')}${keepingUsd < 0 || rebuyingUsd < 0 ? ', minus being a gain' : ''}${even}). ${isCalfSold ? 'A calf is counted' : 'No calf is counted'}. Prices seen ${show('pricesSeenDay')}.`;
  },
  picture: {
    kind: 'lines',
    rows: 'byPrice',
    x: 'priceUsd',
    ys: ['savesUsd'],
    you: { at: 'likelyBuyBackUsd', value: 'keepAdvantageUsd' },
    mark: { at: 'evenBuyBackUsd', says: 'even at {evenBuyBackUsd}' },
  },
  sources: ['jones-keep-or-sell-2011', 'gessner-2016', 'gessner-igrow-2017', 'ritten-rebuild-2015', 'csu-abm-partial-budget'],
  topic: 'hay',
  order: 30,
  guides: ['selling-or-feeding', 'choosing-who-goes'],
});
