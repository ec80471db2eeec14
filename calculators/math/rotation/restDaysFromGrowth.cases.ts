import { checkList } from '../checks.ts';
import { restDaysFromGrowth } from './restDaysFromGrowth.ts';

const rest = (growthLbPerAcDay: number) => restDaysFromGrowth({ startHeightIn: 8, stopHeightIn: 4, poundsPerAcreInch: 250, growthLbPerAcDay });

export default checkList('restDaysFromGrowth', [
  {
    what: 'Growth of 70 lb an acre and day against 35: share of the time',
    ours: () => rest(70) / rest(35),
    printed: '0.5',
    source: 'milkproduction-rotation',
    where: 'Half the time to regrow',
    seen: 'print',
  },
  {
    what: '1,000 lb to regrow at 40 lb a day',
    ours: () => rest(40),
    printed: '25',
    source: 'umaine-pasture-lesson-1',
    where: 'Appendix D, good mixed pasture grazed from 8 in to 4 in, worked out apart',
    seen: 'computed',
  },
]);
