import { checkList } from '../checks.ts';
import { rectangleAc, roofGallons } from './rectangleAc.ts';

export default checkList('rectangleAc', [
  {
    what: 'one inch on a roof of 1,000 square feet, gallons',
    ours: () => roofGallons(1, 1000),
    printed: '623',
    source: 'math-central-roof-2006',
    where: 'answer',
    seen: 'print',
  },
  {
    what: 'an acre as a strip a foot wide, acres',
    ours: () => rectangleAc(43_560, 1),
    printed: '1',
    source: 'sizes-acre-foot',
    where: 'acre-foot: 43,560 cubic feet',
    seen: 'computed',
  },
]);
