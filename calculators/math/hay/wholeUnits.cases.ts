import { checkList } from '../checks.ts';
import { wholeUnits } from './wholeUnits.ts';

export default checkList('wholeUnits', [
  {
    what: '800,000 lb in bales of 1,250 lb',
    ours: () => wholeUnits(800000, 1250),
    printed: '640',
    source: 'johnson-hay-needs-2024',
    where: 'Bales for 100 cows',
    seen: 'print',
  },
]);
