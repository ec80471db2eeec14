import { checkList } from '../checks.ts';
import { paddocksNeeded, wholePaddocks } from './paddocksNeeded.ts';

export default checkList('paddocksNeeded', [
  {
    what: '35 days of rest, 3 days of grazing, one herd: paddocks to build',
    ours: () => wholePaddocks({ restDays: 35, stayDays: 3, herds: 1 }),
    printed: '13',
    source: 'penn-state-four-steps',
    where: 'Step 3, example herd',
    seen: 'print',
  },
  {
    what: '30 days of rest, 3 days of grazing, two herds',
    ours: () => paddocksNeeded({ restDays: 30, stayDays: 3, herds: 2 }),
    printed: '12',
    source: 'penn-state-four-steps',
    where: 'Step 3, rule, carried to two herds',
    seen: 'computed',
  },
]);
