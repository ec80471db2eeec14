import { checkList } from '../checks.ts';
import { indexStandardError } from './indexStandardError.ts';

export default checkList('indexStandardError', [
  {
    what: 'Index −1.5, 30 years',
    ours: () => indexStandardError(-1.5, 30),
    printed: '0.27',
    source: 'kite-1977',
    where: 'formula for a normal quantile, worked out apart',
    seen: 'computed',
  },
  {
    what: 'Index −1.5, 10 years',
    ours: () => indexStandardError(-1.5, 10),
    printed: '0.46',
    source: 'kite-1977',
    where: 'formula for a normal quantile, worked out apart',
    seen: 'computed',
  },
]);
