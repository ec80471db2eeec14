import { checkList } from '../checks.ts';
import { restDaysGiven } from './restDaysGiven.ts';

export default checkList('restDaysGiven', [
  {
    what: '12 paddocks, 3 days each, one herd',
    ours: () => restDaysGiven({ paddocks: 12, stayDays: 3, herds: 1 }),
    printed: '33',
    source: 'penn-state-four-steps',
    where: 'Step 3, rule turned round',
    seen: 'computed',
  },
]);
