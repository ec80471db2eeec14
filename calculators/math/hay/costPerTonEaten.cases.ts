import { checkList } from '../checks.ts';
import { costPerTonEaten } from './costPerTonEaten.ts';

export default checkList('costPerTonEaten', [
  {
    what: 'Silage at $30 a ton, 73 % moisture: dollars a ton of dry matter',
    ours: () => costPerTonEaten({ pricePerTon: 30, moisturePercent: 73, storageLossPercent: 0, feedingLossPercent: 0 }),
    printed: '111.11',
    source: 'warner-feedstuff-costs',
    where: 'Example of wheat silage',
    seen: 'print',
  },
]);
