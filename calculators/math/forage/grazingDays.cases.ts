import { checkList } from '../checks.ts';
import { grazingDays } from './grazingDays.ts';

export default checkList('grazingDays', [
  {
    what: 'Good pasture, 275 lb an inch: days for a cow of 30 lb a day, for each inch',
    ours: () => grazingDays({ eatenLb: 275, dailyDemandLb: 30 }),
    printed: '9',
    source: 'umaine-pasture-lesson-5',
    where: 'A simpler approach',
    seen: 'print',
  },
  {
    what: 'Fair pasture, 175 lb an inch',
    ours: () => grazingDays({ eatenLb: 175, dailyDemandLb: 30 }),
    printed: '6',
    source: 'umaine-pasture-lesson-5',
    where: 'A simpler approach',
    seen: 'print',
  },
  {
    what: 'Excellent pasture, 350 lb an inch',
    ours: () => grazingDays({ eatenLb: 350, dailyDemandLb: 30 }),
    printed: '11',
    source: 'umaine-pasture-lesson-5',
    where: 'A simpler approach',
    seen: 'print',
    differs: { by: '0.7', because: 'the page says "about" and rounds 11.7 down' },
  },
]);
