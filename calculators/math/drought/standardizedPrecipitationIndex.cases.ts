import { checkList, tableChecks } from '../checks.ts';
import { indexUnderGamma } from './standardizedPrecipitationIndex.ts';

export default checkList('standardizedPrecipitationIndex', [
  ...tableChecks({
    columns: ['index'],
    text: `
      2,50,0,10         -2.107824
      2,50,0,50         -0.630325
      2,50,0,100        0.237832
      2,50,0,200        1.331099
      2,50,.1,10        -1.196397
      2,50,.1,50        -0.418428
      2,50,.1,200       1.388974
      .8,30,0,6         -0.608124
      .8,30,0,24        0.377321
      3.76,.52,0,3.15   1.1701149
    `,
    what: (row) => `Shape, scale, share of zeros, amount: ${row.replaceAll(',', ', ')}`,
    ours: (row) => {
      const [shape = 0, scale = 0, zeroShare = 0, amount = 0] = row.split(',').map(Number);
      return indexUnderGamma({ shape, scale, zeroShare, amount });
    },
    source: 'mpmath',
    where: 'gammainc and inverse of ncdf',
    seen: 'computed',
  }),
  {
    what: 'No rain where 8.7 % of years have none',
    ours: () => indexUnderGamma({ shape: 1, scale: 10, zeroShare: 0.087, amount: 0 }),
    printed: '-1.36',
    source: 'mpmath',
    where: 'inverse of ncdf at 0.087',
    seen: 'computed',
  },
]);
