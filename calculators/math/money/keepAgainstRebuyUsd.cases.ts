import { checkList } from '../checks.ts';
import { keepAgainstRebuyUsd } from './keepAgainstRebuyUsd.ts';

const inputs = { source: 'jones-keep-or-sell-2011', where: 'inputs of the example, worked out apart', seen: 'computed' } as const;
const cow = () =>
  keepAgainstRebuyUsd({
    days: 270,
    dailyCostUsd: 2.5 + 0.3,
    calfIncomeUsd: 0,
    agingUsdPerYear: 0,
    deathLossPercentPerYear: 0,
    saleUsd: 1100,
    saleCostsUsd: 0,
    interestPercentPerYear: 5,
    buyBackUsd: 1600,
    buyBackCostsUsd: 0,
  });

export default checkList('keepAgainstRebuyUsd', [
  { what: 'nine months at $2.80 a day, cost of keeping, dollars', ours: () => cow().keepingUsd, printed: '756.00', ...inputs },
  { what: '$1,100 for nine months at 5 percent, dollars', ours: () => cow().interestUsd, printed: '40.68', ...inputs },
  { what: 'sold for $1,100, bought back for $1,600, dollars', ours: () => cow().rebuyingUsd, printed: '459.32', ...inputs },
  { what: 'keeping against selling, dollars', ours: () => cow().keepAdvantageUsd, printed: '-296.68', ...inputs },
]);
