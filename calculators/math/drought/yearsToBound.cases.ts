import { checkList, tableChecks } from '../checks.ts';
import { yearsToBound } from './yearsToBound.ts';

export default checkList(
  'yearsToBound',
  tableChecks({
    columns: ['0.90', '0.95', '0.99'],
    text: `
      0.1   22  29  44
      0.05  45  59  90
    `,
    what: (share, confidence) => `Years so that the worst one bounds the need exceeded in ${share} of years, confidence ${confidence}`,
    ours: (share, confidence) => yearsToBound(Number(share), Number(confidence)),
    source: 'wilks-1941',
    where: 'least n with (1 − p)^n at or below 1 − c, counted up apart',
    seen: 'computed',
  }),
);
