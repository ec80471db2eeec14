import { checkList } from '../checks.ts';
import { coldIncreasePercent } from './coldIncreasePercent.ts';

const rusche = { source: 'rusche-2020', where: 'When do cattle feel cold stress', seen: 'print' } as const;

export default checkList('coldIncreasePercent', [
  { what: '17 F, dry winter coat', ours: () => coldIncreasePercent({ temperatureF: 17, coat: 'dry-winter' }), printed: '15', ...rusche },
  {
    what: '17 F, wet coat',
    ours: () => coldIncreasePercent({ temperatureF: 17, coat: 'wet' }),
    printed: '40',
    ...rusche,
    differs: { by: '2', because: 'the page says "about 40"' },
  },
]);
