import { checkList } from '../checks.ts';
import { storageLossPercent } from './storageLossPercent.ts';

export default checkList('storageLossPercent', [
  {
    what: 'Barn, under 9 months: percent, at most',
    ours: () => storageLossPercent({ method: 'barn', months: 9 }).high,
    printed: '2',
    source: 'schick-hay-storage',
    where: 'Indoor storage',
    seen: 'print',
  },
  {
    what: 'Exposed on the ground, at worst: percent',
    ours: () => storageLossPercent({ method: 'ground-uncovered', months: 18 }).high,
    printed: '50',
    source: 'huhnke-bae1716',
    where: 'Dry matter losses can reach 50 percent',
    seen: 'transcription',
  },
]);
