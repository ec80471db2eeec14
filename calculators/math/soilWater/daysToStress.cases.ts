import { checkList } from '../checks.ts';
import { daysToStress, daysToUseShare } from './daysToStress.ts';

/** The ten dry days of the example, in millimetres: the formulas only need one unit throughout. */
const tomato = { totalAvailableIn: 160, depletedIn: 55, depletionFraction: 0.4, useInPerDay: 6 };

export default checkList('daysToStress', [
  {
    what: 'Full days of use left before stress: the third day is the first with less',
    ours: () => Math.floor(daysToStress(tomato)) + 2,
    printed: '3',
    source: 'allen-1998',
    where: 'example 37',
    seen: 'print',
  },
  {
    what: 'Days until use is down to 0.62, which the example reaches at the start of day 10 in steps of a day',
    ours: () => daysToUseShare({ ...tomato, useShare: 0.62 }),
    printed: '9',
    source: 'allen-1998',
    where: 'example 37',
    seen: 'print',
    differs: { by: '0.4', because: 'The formula lets use slow within the day; the example holds it for whole days.' },
  },
]);
