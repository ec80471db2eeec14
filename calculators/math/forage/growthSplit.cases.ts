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
]);
