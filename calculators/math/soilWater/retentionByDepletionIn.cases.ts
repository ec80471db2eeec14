import { checkList } from '../checks.ts';
import { antecedentCurveNumber } from '../runoff/antecedentCurveNumber.ts';
import { retentionIn } from '../runoff/retentionIn.ts';
import { retentionByDepletionIn } from './retentionByDepletionIn.ts';

export default checkList('retentionByDepletionIn', [
  {
    what: 'Topsoil 31 % depleted, curve number 74: back at the retention of average ground',
    ours: () =>
      retentionByDepletionIn({
        wetRetentionIn: retentionIn(antecedentCurveNumber(74, 'wet')),
        dryRetentionIn: retentionIn(antecedentCurveNumber(74, 'dry')),
        depletedShare: 0.31,
      }),
    printed: '3.5',
    source: 'nrcs-neh630-10-2004',
    where: 'table 10-1: S of curve number 74 is 3.51 in',
    seen: 'computed',
  },
]);
