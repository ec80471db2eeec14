import { checkList } from '../checks.ts';
import { dilutionSharePercent } from './dilutionSharePercent.ts';

// The shares that laboratories allow at the top of a class are those that bring the ration to their lowest class with feed free of nitrate.
const clemson = { source: 'clemson-nitrate', where: 'classes up to 2,000 and 4,000 ppm', seen: 'print' } as const;

export default checkList('dilutionSharePercent', [
  {
    what: '2,000 ppm held to 1,000 ppm, percent of the ration',
    ours: () => dilutionSharePercent({ limitPpm: 1000, highPpm: 2000, lowPpm: 0 }),
    printed: '50',
    ...clemson,
  },
  {
    what: '4,000 ppm held to 1,000 ppm, percent of the ration',
    ours: () => dilutionSharePercent({ limitPpm: 1000, highPpm: 4000, lowPpm: 0 }),
    printed: '25',
    ...clemson,
  },
  {
    what: '2,000 ppm held to 1,000 ppm, percent of the ration',
    ours: () => dilutionSharePercent({ limitPpm: 1000, highPpm: 2000, lowPpm: 0 }),
    printed: '50',
    source: 'dairyland-nitrate',
    where: 'second class, half of the ration of pregnant animals',
    seen: 'print',
  },
  {
    what: '1,400 ppm held to 700 ppm, percent of the ration',
    ours: () => dilutionSharePercent({ limitPpm: 700, highPpm: 1400, lowPpm: 0 }),
    printed: '50',
    source: 'servitech-nitrate',
    where: 'low rating, pregnant ruminants',
    seen: 'print',
  },
]);
