import { checkList } from '../checks.ts';
import { antecedentCurveNumber } from './antecedentCurveNumber.ts';
import { stormRunoffIn } from './stormRunoffIn.ts';

const storm = (rainIn: number, condition: 'dry' | 'wet') =>
  stormRunoffIn({ rainIn, curveNumber: antecedentCurveNumber(74, condition), abstractionRatio: 0.2 });
const handbook = { source: 'nrcs-neh630-10-2004', where: 'example 10-2', seen: 'memory' } as const;

export default checkList('antecedentCurveNumber', [
  { what: '4.3 in of rain, curve number 74 on dry ground', ours: () => storm(4.3, 'dry'), printed: '0.65', ...handbook },
  { what: '4.3 in of rain, curve number 74 on wet ground', ours: () => storm(4.3, 'wet'), printed: '3.0', ...handbook },
  {
    what: '3 in of rain, curve number 74 on dry ground',
    ours: () => storm(3, 'dry'),
    printed: '0.19',
    source: 'tr55-1986',
    where: 'eq. 2-3, worked out apart',
    seen: 'computed',
  },
  {
    what: '3 in of rain, curve number 74 on wet ground',
    ours: () => storm(3, 'wet'),
    printed: '1.82',
    source: 'tr55-1986',
    where: 'eq. 2-3, worked out apart',
    seen: 'computed',
  },
]);
