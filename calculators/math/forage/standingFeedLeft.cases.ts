import { checkList } from '../checks.ts';
import { standingFeedLeft } from './standingFeedLeft.ts';

/** 61.5 percent in the season of 2015 at 9.7 percent a month. */
const seasonMonths = 61.5 / 9.7;

export default checkList('standingFeedLeft', [
  {
    what: '2016: percent lost at 8.7 % a month',
    ours: () => 100 - standingFeedLeft({ startLbPerAc: 100, lossPercentPerMonth: 8.7, months: seasonMonths }),
    printed: '55.0',
    source: 'larsen-2021',
    where: 'Abstract',
    seen: 'print',
    differs: { by: '0.4', because: 'the length of the season is not printed; it is taken from the figures of 2015, which are rounded' },
  },
  {
    what: '2017: percent lost at 7.3 % a month',
    ours: () => 100 - standingFeedLeft({ startLbPerAc: 100, lossPercentPerMonth: 7.3, months: seasonMonths }),
    printed: '46.5',
    source: 'larsen-2021',
    where: 'Abstract',
    seen: 'print',
    differs: { by: '0.4', because: 'the length of the season is not printed; it is taken from the figures of 2015, which are rounded' },
  },
]);
