import { checkList } from '../checks.ts';
import { partialHerd } from './partialHerd.ts';

export default checkList('partialHerd', [
  {
    what: '35 of 200 cows sold, percent',
    ours: () => partialHerd({ herdHead: 200, sellHead: 35, keepingUsdPerHead: 600, rebuyingUsdPerHead: 500 }).soldPercent,
    printed: '17.5',
    source: 'gessner-2016',
    where: 'option A',
    seen: 'print',
  },
]);
