import { checkList } from '../checks.ts';
import { herdAnimalUnits } from './herdAnimalUnits.ts';

export default checkList('herdAnimalUnits', [
  {
    what: '30 pairs at 1.6 and a bull at 1.7',
    ours: () =>
      herdAnimalUnits([
        { head: 30, unitsPerHead: 1.6 },
        { head: 1, unitsPerHead: 1.7 },
      ]),
    printed: '50',
    source: 'penn-state-four-steps',
    where: 'Step 1, example herd',
    seen: 'print',
  },
  {
    what: '100 cows, 15 heifers, 4 bulls for 6 months',
    ours: () =>
      6 *
      herdAnimalUnits([
        { head: 100, unitsPerHead: 1.2 },
        { head: 15, unitsPerHead: 0.7 },
        { head: 4, unitsPerHead: 1.5 },
      ]),
    printed: '819',
    source: 'stocking-example-unsigned',
    where: 'Demand of the herd',
    seen: 'transcription',
  },
]);
