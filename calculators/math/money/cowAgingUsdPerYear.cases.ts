import { checkList } from '../checks.ts';
import { yearsInHerd } from './cowAgingUsdPerYear.ts';

export default checkList('cowAgingUsdPerYear', [
  {
    what: '16 percent culled a year, years in the herd',
    ours: () => yearsInHerd(16),
    printed: '6.25',
    source: 'dennis-replacements-2023',
    where: 'productive life',
    seen: 'print',
  },
]);
