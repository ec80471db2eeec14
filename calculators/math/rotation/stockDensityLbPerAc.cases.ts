import { checkList } from '../checks.ts';
import { stockDensityLbPerAc } from './stockDensityLbPerAc.ts';

const weightLb = 1200;

export default checkList('stockDensityLbPerAc', [
  {
    what: '15 cows on 60 acres undivided: acres a cow',
    ours: () => weightLb / stockDensityLbPerAc({ head: 15, weightLb, areaAc: 60 }),
    printed: '4',
    source: 'uga-b1568',
    where: 'Stocking rate against stock density',
    seen: 'print',
  },
  {
    what: 'The same cows on a quarter of it: acres a cow',
    ours: () => weightLb / stockDensityLbPerAc({ head: 15, weightLb, areaAc: 60 / 4 }),
    printed: '1',
    source: 'uga-b1568',
    where: 'Stocking rate against stock density',
    seen: 'print',
  },
]);
