import { checkList } from '../checks.ts';
import { stockDaysPerAc } from './stockDaysPerAc.ts';

export default checkList('stockDaysPerAc', [
  {
    what: '75 animal units for 9 days on 3.6 acres, counted in animal units',
    ours: () => stockDaysPerAc({ eatenLbPerDay: 75 * 26, days: 9, areaAc: 3.6, yardstickLbPerDay: 26 }),
    printed: '188',
    source: 'tannachton-cow-days',
    where: 'Paragraph on 3.6 acres and 75 animal units',
    seen: 'print',
  },
  {
    what: '100 cows for one day on 2.2 acres, as the lesson allots 45 cow-days an acre',
    ours: () => stockDaysPerAc({ eatenLbPerDay: 100 * 30, days: 1, areaAc: 2.2, yardstickLbPerDay: 30 }),
    printed: '45',
    source: 'umaine-pasture-lesson-5',
    where: 'A simpler approach, steps 4 and 5',
    seen: 'print',
  },
  {
    what: '60 cows for 5 days on 10 acres, with 1,860 lb of hay: a day of the five came from hay',
    ours: () => stockDaysPerAc({ eatenLbPerDay: 60 * 31, days: 5, areaAc: 10, yardstickLbPerDay: 31, hayFedLb: 1860 }),
    printed: '24',
    source: 'umaine-pasture-lesson-5',
    where: 'Cow-days an acre, worked out apart: 60 x 5 / 10 = 30, less 60 x 1 / 10',
    seen: 'computed',
  },
]);
