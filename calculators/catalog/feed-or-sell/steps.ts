import type { ValuesOf } from '../../kit/inputs.ts';
import { formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;

/** Where both cost the same, part of a herd, and what the answer depends on. */
export const evenSteps: Working<ValuesOf<typeof inputs> & Results, Results> = [
  formula(
    'evenDays',
    tex`\frac{\q{likelyBuyBackUsd} + \q{buyBackCostsUsd} - \q{netSaleUsd} + \q{countedCalfUsd}}{\q{dailyCostUsdPerDay} + \frac{\q{agingUsd}}{365} + \frac{\q{likelyBuyBackUsd} \times \q{deathLossPercent}}{36500} + \frac{\q{netSaleUsd} \times \q{interestPercent}}{36500}}`,
    {
      says: 'How many days of feeding it takes for both to cost the same. Under that, keeping is cheaper.',
      onlyWhen: ({ evenDays }) => evenDays > 0,
      source: 'jones-keep-or-sell-2011, factors to consider',
    },
  ),
  formula(
    'evenBuyBackUsd',
    tex`\frac{\q{netSaleUsd} + \q{interestUsd} - \q{buyBackCostsUsd} + \q{feedingUsd} + \q{olderUsd} - \q{countedCalfUsd}}{1 - \frac{\q{deathLossPercent}}{100} \times \frac{\q{keepDays}}{365}}`,
    {
      says: 'The buy-back price for both to cost the same. If cows will cost more than this, keep.',
      onlyWhen: ({ evenBuyBackUsd }) => evenBuyBackUsd > 0,
      source: 'jones-keep-or-sell-2011, factors to consider',
    },
  ),
  formula('evenCostUsdPerDay', tex`\q{dailyCostUsdPerDay} + \frac{\q{keepAdvantageUsd}}{\q{keepDays}}`, {
    says: 'The cost a day for both to cost the same. If she can be fed for less, keep.',
    source: 'jones-keep-or-sell-2011, factors to consider',
  }),
  when(
    ({ dailyCostFrom }) => dailyCostFrom === 'hay',
    [
      formula('evenHayUsdPerTon', tex`\frac{2000 \times (\q{evenCostUsdPerDay} - \q{otherUsdPerDay})}{\q{hayFedLbPerDay}}`, {
        says: 'That as a price of hay.',
        source: 'common practice',
      }),
      lookup('fedHead', { says: 'Hay on hand, divided by what a cow takes in {keepDays}; whole cows.', source: 'common practice' }),
    ],
  ),
  formula('keptHead', tex`\q{herdHead} - \q{sellHead}`, { says: 'Part of the herd: the cows kept.' }),
  formula('soldPercent', tex`\frac{100 \times \q{sellHead}}{\q{herdHead}}`, { says: 'The share sold.', source: 'gessner-2016, option A' }),
  formula('planCostUsd', tex`\q{keptHead} \times \q{keepingUsd} + \q{sellHead} \times \q{rebuyingUsd}`, { says: 'What the whole plan costs.' }),
  formula('planSavedUsd', tex`\q{sellHead} \times (\q{keepingUsd} - \q{rebuyingUsd})`, { says: 'Against keeping all.' }),
  tabulate('swings', {
    says: 'The whole working again with one number moved and the rest left alone; the widest first. The buy-back price goes from your cheap to your high one, the rest {swingPercent} down and up.',
    formulas: { swingUsd: tex`\max(\q{lowEndUsd}, \q{highEndUsd}) - \min(\q{lowEndUsd}, \q{highEndUsd})` },
  }),
  tabulate('byPrice', {
    says: 'Both costs again at other buy-back prices.',
    formulas: {
      keepCostUsd: tex`\q{feedingUsd} + \q{olderUsd} + \q{priceUsd} \times \frac{\q{deathLossPercent}}{100} \times \frac{\q{keepDays}}{365} - \q{countedCalfUsd}`,
      rebuyCostUsd: tex`\q{priceUsd} + \q{buyBackCostsUsd} - \q{netSaleUsd} - \q{interestUsd}`,
      savesUsd: tex`\q{rebuyCostUsd} - \q{keepCostUsd}`,
    },
  }),
];
