import { checkList } from '../checks.ts';
import { growthSplit } from './growthSplit.ts';

const half = growthSplit({ goneShare: 0.5, eatenOfGone: 0.5 });

export default checkList('growthSplit', [
  {
    what: 'Take half: percent left',
    ours: () => 100 * half.leftShare,
    printed: '50',
    source: 'white-b5036',
    where: 'Harvest efficiency',
    seen: 'print',
  },
  {
    what: 'Take half: percent eaten',
    ours: () => 100 * half.eatenShare,
    printed: '25',
    source: 'white-b5036',
    where: 'Harvest efficiency',
    seen: 'print',
  },
  {
    what: 'Take half: percent lost',
    ours: () => 100 * half.lostShare,
    printed: '25',
    source: 'white-b5036',
    where: 'Harvest efficiency',
    seen: 'print',
  },
  {
    what: 'Moderate stocking, grazing efficiency 49 %, half of the crop gone: harvest efficiency',
    ours: () => 100 * growthSplit({ goneShare: 0.5, eatenOfGone: 0.49 }).eatenShare,
    printed: '24',
    source: 'smart-2010',
    where: 'Abstract',
    seen: 'print',
    differs: { by: '0.6', because: 'the abstract prints both efficiencies but not the share gone; half is the range rule' },
  },
]);
