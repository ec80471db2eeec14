import { checkList } from '../checks.ts';
import { breakEvenSalePriceUsdPerCwt } from './breakEvenSalePriceUsdPerCwt.ts';

export default checkList('breakEvenSalePriceUsdPerCwt', [
  {
    what: 'stocker bought for $378, $126.50 to keep, sold at 647 lb, dollars per hundred lb',
    ours: () => breakEvenSalePriceUsdPerCwt({ valueNowUsd: 378, costsUsd: 126.5, deathLossPercent: 0, saleWeightLb: 647 }),
    printed: '77.98',
    source: 'harp-stocker-slides',
    where: 'break even, stocker',
    seen: 'transcription',
  },
  {
    what: 'feeder bought for $630, $350 to feed, sold at 1,204 lb, dollars per hundred lb',
    ours: () => breakEvenSalePriceUsdPerCwt({ valueNowUsd: 630, costsUsd: 350, deathLossPercent: 0, saleWeightLb: 1204 }),
    printed: '81.40',
    source: 'harp-stocker-slides',
    where: 'break even, feedlot',
    seen: 'transcription',
  },
]);
