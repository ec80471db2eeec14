import { checkList } from '../checks.ts';
import { bucketFlowGpm, deliveredGal, flowForGpm } from './deliveredGal.ts';

const well = { source: 'gw-project-domestic-wells-2022', where: 'solution of exercise 1', seen: 'print' } as const;

export default checkList('deliveredGal', [
  {
    what: '1,200 gallons in 240 minutes, gallons a minute',
    ours: () => flowForGpm(1200, 4),
    printed: '5.0',
    source: 'alberta-pasture-pipeline',
    where: 'step 2',
    seen: 'print',
  },
  {
    what: 'spring of a quart a minute, gallons a day',
    ours: () => deliveredGal(bucketFlowGpm(0.25, 60), 24),
    printed: '360',
    source: 'missouri-tank-capacities-2000',
    where: 'spring development',
    seen: 'print',
  },
  // Liters stand for gallons: the sums are the same.
  { what: '2 liters a minute for two hours, liters', ours: () => deliveredGal(2, 2), printed: '240', ...well },
  { what: '2 liters a minute for a day, liters', ours: () => deliveredGal(2, 24), printed: '2,880', ...well },
]);
