import type { ValuesOf } from '../../kit/inputs.ts';
import type { Step } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;

/** Where both cost the same, part of a herd, and what the answer depends on. */
export const evenSteps: readonly Step<ValuesOf<typeof inputs> & Results, Results>[] = [
  {
    kind: 'formula',
    shows: 'evenDays',
    says: 'How many days of feeding it takes for both to cost the same. Under that, keeping is cheaper.',
    onlyWhen: ({ evenDays }) => evenDays > 0,
    source: 'jones-keep-or-sell-2011, factors to consider',
    ways: [
      {
        formula: String.raw`\frac{\q{likelyBuyBackUsd} + \q{buyBackCostsUsd} - \q{netSaleUsd} + \q{countedCalfUsd}}{\q{dailyCostUsdPerDay} + \frac{\q{agingUsd}}{365} + \frac{\q{likelyBuyBackUsd} \times \q{deathLossPercent}}{36500} + \frac{\q{netSaleUsd} \times \q{interestPercent}}{36500}}`,
      },
    ],
  },
  {
    kind: 'formula',
    shows: 'evenBuyBackUsd',
    says: 'The buy-back price for both to cost the same. If cows will cost more than this, keep.',
    onlyWhen: ({ evenBuyBackUsd }) => evenBuyBackUsd > 0,
    source: 'jones-keep-or-sell-2011, factors to consider',
    ways: [
      {
        formula: String.raw`\frac{\q{netSaleUsd} + \q{interestUsd} - \q{buyBackCostsUsd} + \q{feedingUsd} + \q{olderUsd} - \q{countedCalfUsd}}{1 - \frac{\q{deathLossPercent}}{100} \times \frac{\q{keepDays}}{365}}`,
      },
    ],
  },
  {
    kind: 'formula',
    shows: 'evenCostUsdPerDay',
    says: 'The cost a day for both to cost the same. If she can be fed for less, keep.',
    source: 'jones-keep-or-sell-2011, factors to consider',
    ways: [{ formula: String.raw`\q{dailyCostUsdPerDay} + \frac{\q{keepAdvantageUsd}}{\q{keepDays}}` }],
  },
  {
    kind: 'formula',
    shows: 'evenHayUsdPerTon',
    says: 'That as a price of hay.',
    onlyWhen: ({ dailyCostFrom }) => dailyCostFrom === 'hay',
    source: 'common practice',
    ways: [{ formula: String.raw`\frac{2000 \times (\q{evenCostUsdPerDay} - \q{otherUsdPerDay})}{\q{hayFedLbPerDay}}` }],
  },
  {
    kind: 'lookup',
    shows: 'fedHead',
    says: 'Hay on hand, divided by what a cow takes in {keepDays}; whole cows.',
    onlyWhen: ({ dailyCostFrom }) => dailyCostFrom === 'hay',
    source: 'common practice',
  },
  { kind: 'formula', shows: 'keptHead', says: 'Part of the herd: the cows kept.', ways: [{ formula: String.raw`\q{herdHead} - \q{sellHead}` }] },
  {
    kind: 'formula',
    shows: 'soldPercent',
    says: 'The share sold.',
    source: 'gessner-2016, option A',
    ways: [{ formula: String.raw`\frac{100 \times \q{sellHead}}{\q{herdHead}}` }],
  },
  {
    kind: 'formula',
    shows: 'planCostUsd',
    says: 'What the whole plan costs.',
    ways: [{ formula: String.raw`\q{keptHead} \times \q{keepingUsd} + \q{sellHead} \times \q{rebuyingUsd}` }],
  },
  {
    kind: 'formula',
    shows: 'planSavedUsd',
    says: 'Against keeping all.',
    ways: [{ formula: String.raw`\q{sellHead} \times (\q{keepingUsd} - \q{rebuyingUsd})` }],
  },
  {
    kind: 'rows',
    of: 'swings',
    says: 'The whole working again with one number moved and the rest left alone; the widest first. The buy-back price goes from your cheap to your high one, the rest {swingPercent} down and up.',
    formulas: { swingUsd: String.raw`\max(\q{lowEndUsd}, \q{highEndUsd}) - \min(\q{lowEndUsd}, \q{highEndUsd})` },
  },
  {
    kind: 'rows',
    of: 'byPrice',
    says: 'Both costs again at other buy-back prices.',
    formulas: {
      keepCostUsd: String.raw`\q{feedingUsd} + \q{olderUsd} + \q{priceUsd} \times \frac{\q{deathLossPercent}}{100} \times \frac{\q{keepDays}}{365} - \q{countedCalfUsd}`,
      rebuyCostUsd: String.raw`\q{priceUsd} + \q{buyBackCostsUsd} - \q{netSaleUsd} - \q{interestUsd}`,
    },
  },
];
