import { checkList } from '../checks.ts';
import { growthFromHeights } from './growthFromHeights.ts';

export default checkList('growthFromHeights', [
  {
    what: 'Hay of 1.8 tons grown in 35 days, as 12 in at 300 lb an inch',
    ours: () => growthFromHeights({ firstHeightIn: 0, secondHeightIn: 12, daysBetween: 35, poundsPerAcreInch: 300 }),
    printed: '103',
    source: 'rinehart-graziers-math',
    where: 'Forage productivity from hay yield',
    seen: 'print',
  },
]);
