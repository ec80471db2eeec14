import { checkList } from '../checks.ts';
import { eatenLbPerAc } from './eatenLbPerAc.ts';

export default checkList('eatenLbPerAc', [
  {
    what: '2,000 lb an acre, a quarter harvested',
    ours: () => eatenLbPerAc({ measured: 'whole-growth', lbPerAc: 2000, harvestShare: 0.25 }),
    printed: '500',
    source: 'drovers-grazing-plan-2012',
    where: 'Example',
    seen: 'print',
  },
  {
    what: '2,800 lb an acre, half harvested',
    ours: () => eatenLbPerAc({ measured: 'whole-growth', lbPerAc: 2800, harvestShare: 0.5 }),
    printed: '1400',
    source: 'pasture-inventory-2015',
    where: 'First approach',
    seen: 'print',
  },
]);
