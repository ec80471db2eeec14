import { checkList } from '../checks.ts';
import { coldIncreasePercent } from './coldIncreasePercent.ts';

const rusche = { source: 'rusche-2020', where: 'When do cattle feel cold stress', seen: 'print' } as const;
const oklahoma = { source: 'oklahoma-cold-feeding', where: 'Sample calculation', seen: 'print' } as const;
const beck = { source: 'beck-cold-2025', where: 'How much more feed', seen: 'print' } as const;

export default checkList('coldIncreasePercent', [
  {
    what: '17 F, dry winter coat',
    ours: () => coldIncreasePercent({ temperatureF: 17, coat: 'dry-winter', wetCoatRule: 'one' }),
    printed: '15',
    ...rusche,
  },
  {
    what: '17 F, wet coat, one percent a degree',
    ours: () => coldIncreasePercent({ temperatureF: 17, coat: 'wet', wetCoatRule: 'one' }),
    printed: '40',
    ...rusche,
    differs: { by: '2', because: 'the page says "about 40"' },
  },
  {
    what: 'wind chill of 4 F, dry winter coat',
    ours: () => coldIncreasePercent({ temperatureF: 4, coat: 'dry-winter', wetCoatRule: 'two' }),
    printed: '28',
    ...oklahoma,
  },
  {
    what: 'wind chill of 4 F, wet coat, two percent a degree',
    ours: () => coldIncreasePercent({ temperatureF: 4, coat: 'wet', wetCoatRule: 'two' }),
    printed: '110',
    ...oklahoma,
    where: 'wet cow: 59 less 4, times 2 percent',
  },
  {
    what: '20 F, dry winter coat',
    ours: () => coldIncreasePercent({ temperatureF: 20, coat: 'dry-winter', wetCoatRule: 'one' }),
    printed: '12',
    ...beck,
  },
]);
