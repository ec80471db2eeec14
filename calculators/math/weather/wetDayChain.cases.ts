import { checkList } from '../checks.ts';
import { chainTotal, wetDayShare } from './wetDayChain.ts';

const seattleJanuary = { wetAfterWet: 47 / 64, wetAfterDry: 19 / 59, shape: 0.9862, scaleMm: 7.1591 };

export default checkList('wetDayChain', [
  {
    what: 'Wet days at Tel Aviv, December to February',
    ours: () => wetDayShare(0.662, 0.25),
    printed: '.425170',
    source: 'katz-1977',
    where: 'long-run chance, worked out apart',
    seen: 'computed',
  },
  {
    what: 'Wet days at Tel Aviv, December, from its counts',
    ours: () => wetDayShare(213 / 326, 117 / 511),
    printed: '.397789',
    source: 'markov-exercise-tel-aviv',
    where: 'counts of the exercise, worked out apart',
    seen: 'computed',
  },
  {
    what: 'Seattle January, mean of 31 days, mm',
    ours: () => chainTotal(seattleJanuary, 31).meanMm,
    printed: '119.94',
    source: 'vega-datasets',
    where: 'weather.csv, Januaries of 2012 to 2015, worked out apart',
    seen: 'computed',
  },
  {
    what: 'Seattle January, standard deviation of 31 days, mm',
    ours: () => Math.sqrt(chainTotal(seattleJanuary, 31).varianceMm2),
    printed: '42.17',
    source: 'vega-datasets',
    where: 'weather.csv, Januaries of 2012 to 2015, worked out apart',
    seen: 'computed',
  },
]);
