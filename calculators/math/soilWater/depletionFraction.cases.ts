import { checkList, tableChecks } from '../checks.ts';
import { depletionFraction } from './depletionFraction.ts';

export default checkList(
  'depletionFraction',
  tableChecks({
    columns: ['1', '3', '5', '7', '9', '12'],
    text: `
      0.60  0.76  0.68  0.60  0.52  0.44  0.32
      0.55  0.71  0.63  0.55  0.47  0.39  0.27
    `,
    what: (fraction, use) => `Table fraction ${fraction}, ${use} mm a day`,
    ours: (fraction, use) => depletionFraction(Number(fraction), Number(use)),
    source: 'allen-1998',
    where: 'chapter 8, worked out apart',
    seen: 'computed',
  }),
);
