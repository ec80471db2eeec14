import { checkList } from '../checks.ts';
import { relativeForageGreatBasinPercent, relativeForagePercent } from './relativeForagePercent.ts';

const line = { source: 'sneva-hyder-1962', where: 'regression line', seen: 'memory' } as const;

export default checkList('relativeForagePercent', [
  {
    what: 'April to June rain at 75 percent of normal, forage under normal, percent',
    ours: () => 100 - relativeForagePercent(75),
    printed: '25',
    source: 'ndsu-precipitation-2020',
    where: 'proportional response',
    seen: 'print',
  },
  { what: 'rain at half of the median, forage, percent', ours: () => relativeForageGreatBasinPercent(50), printed: '44.9', ...line },
  { what: 'rain at 75 percent of the median, forage, percent', ours: () => relativeForageGreatBasinPercent(75), printed: '72.7', ...line },
]);
