import { checkList, tableChecks } from '../checks.ts';
import { lnGamma } from './lnGamma.ts';

export default checkList(
  'lnGamma',
  tableChecks({
    columns: ['ln Γ'],
    text: `
      0.1    2.25271265173421
      0.5    0.572364942924700
      1      0
      1.5    -0.120782237635245
      2.5    0.284682870472919
      3.76   1.49865620407095
      5      3.17805383034795
      10     12.8018274800815
      50     144.565743946345
      100.5  361.435540467778
    `,
    what: (x) => `ln Γ(${x})`,
    ours: (x) => lnGamma(Number(x)),
    source: 'mpmath',
    where: 'loggamma',
    seen: 'computed',
    differs: (x) => (Number(x) < 3 ? { by: '2e-15', because: 'The list has more digits than a double.' } : undefined),
  }),
);
