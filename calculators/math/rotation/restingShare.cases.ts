import { checkList } from '../checks.ts';
import { restingShare } from './restingShare.ts';

export default checkList('restingShare', [
  {
    what: '4 paddocks, one herd: percent at rest',
    ours: () => 100 * restingShare({ paddocks: 4, herds: 1 }),
    printed: '75',
    source: 'shelton-rest',
    where: 'Four paddocks',
    seen: 'print',
  },
  {
    what: '12 paddocks, one herd: percent at rest',
    ours: () => 100 * restingShare({ paddocks: 12, herds: 1 }),
    printed: '94',
    source: 'shelton-rest',
    where: 'Twelve paddocks',
    seen: 'print',
    differs: { by: '2.4', because: 'eleven of twelve is 91.7; 94 belongs to sixteen paddocks' },
  },
]);
