import { checkList } from '../checks.ts';
import { actualRestDays } from './actualRestDays.ts';

export default checkList('actualRestDays', [
  {
    what: 'Out on May 10 and in again on June 14, as days of the year: 21 days of May and 14 of June',
    ours: () => actualRestDays({ outDay: 130, nextInDay: 165 }),
    printed: '35',
    source: 'penn-state-four-steps',
    where: 'The rest of step 3, laid on a calendar by hand',
    seen: 'computed',
  },
]);
