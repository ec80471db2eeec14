import { checkList } from '../checks.ts';
import { likeYearsCaughtUp } from './likeYearsCaughtUp.ts';

/** Thirty years as dry by the date as this one; six of them made it up. */
const record = Array.from({ length: 30 }, (_, index) => ({ beforeIn: 3, afterIn: index < 6 ? 6 : 2 }));

export default checkList('likeYearsCaughtUp', [
  {
    what: '6 of 30 years caught up, upper end of the exact interval, percent',
    ours: () => likeYearsCaughtUp(4, record, 9).upperPercent,
    printed: '38.57',
    source: 'clopper-pearson-1934',
    where: 'the tail sum of 6 in 30 set to 0.025, solved with another program',
    seen: 'computed',
  },
]);
