import { checkList, tableChecks } from '../checks.ts';
import { soilGroupFromRate } from './soilGroupFromRate.ts';

export default checkList(
  'soilGroupFromRate',
  tableChecks({
    columns: ['group'],
    text: `
      0.04  D
      0.06  C
      0.14  C
      0.16  B
      0.29  B
      0.31  A
    `,
    what: (rate) => `transmission of ${rate} inches per hour`,
    ours: (rate) => soilGroupFromRate(Number(rate)).toUpperCase(),
    source: 'tr55-1986',
    where: 'appendix A, ranges of the groups',
    seen: 'print',
  }),
);
