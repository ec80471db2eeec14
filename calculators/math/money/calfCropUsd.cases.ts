import { checkList } from '../checks.ts';
import { calfCropUsd } from './calfCropUsd.ts';

const gessner = { source: 'gessner-2016', where: 'baseline, 200 head', seen: 'print' } as const;
const ritten = { source: 'ritten-rebuild-2015', where: 'calculating payback', seen: 'print' } as const;
const herd = () => calfCropUsd({ cows: 200, weaningPercent: 85, weightLb: 500, priceUsdPerCwt: 140 });
const calf = () => calfCropUsd({ cows: 1, weaningPercent: 100, weightLb: 550, priceUsdPerCwt: 280 });

export default checkList('calfCropUsd', [
  { what: '200 cows, 85 percent weaned, calves', ours: () => herd().calves, printed: '170', ...gessner },
  { what: 'calves of 500 lb at $140, income, dollars', ours: () => herd().incomeUsd, printed: '119,000', ...gessner },
  { what: 'the same less $600 a cow, dollars', ours: () => herd().incomeUsd - 200 * 600, printed: '-1,000', ...gessner },
  {
    what: 'the same herd at $150, less $600 a cow, dollars',
    ours: () => calfCropUsd({ cows: 200, weaningPercent: 85, weightLb: 500, priceUsdPerCwt: 150 }).incomeUsd - 200 * 600,
    printed: '7,500',
    source: 'gessner-igrow-2017',
    where: 'example scenario, worked out apart',
    seen: 'computed',
  },
  { what: 'calf of 550 lb at $280, dollars', ours: () => calf().incomeUsd, printed: '1,540', ...ritten },
  { what: 'the same less $1,000 to carry the cow, dollars', ours: () => calf().incomeUsdPerCow - 1000, printed: '540', ...ritten },
]);
