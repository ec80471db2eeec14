import { checkList } from '../checks.ts';
import { usableShare } from './usableShare.ts';

export default checkList('usableShare', [
  {
    what: 'Within 1.6 km of water: percent accessible',
    ours: () => 100 * usableShare({ waterDistanceMi: 0.9, slopePercent: 0 }),
    printed: '100',
    source: 'rangelands-gateway-matching',
    where: 'Step a',
    seen: 'print',
  },
  {
    what: '1.6 to 3.2 km from water: percent accessible',
    ours: () => 100 * usableShare({ waterDistanceMi: 1.5, slopePercent: 0 }),
    printed: '50',
    source: 'rangelands-gateway-matching',
    where: 'Step a',
    seen: 'print',
  },
  {
    what: 'Over 3.2 km from water: percent accessible',
    ours: () => 100 * usableShare({ waterDistanceMi: 2.1, slopePercent: 0 }),
    printed: '0',
    source: 'rangelands-gateway-matching',
    where: 'Step a',
    seen: 'print',
  },
]);
