import { checkList } from '../checks.ts';
import { evaporableWaterMm } from './evaporableWaterMm.ts';

export default checkList('evaporableWaterMm', [
  {
    what: 'Sandy loam, 0.23 and 0.10, layer of 0.1 m',
    ours: () => evaporableWaterMm({ fieldCapacityShare: 0.23, wiltingPointShare: 0.1 }),
    printed: '18',
    source: 'allen-1998',
    where: 'example 35',
    seen: 'print',
  },
]);
