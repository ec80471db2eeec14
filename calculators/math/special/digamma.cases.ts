import { checkList, tableChecks } from '../checks.ts';
import { digamma, trigamma } from './digamma.ts';

export default checkList(
  'digamma',
  tableChecks({
    columns: ['ψ', 'ψ′'],
    text: `
      0.1    -10.4237549404111   101.433299150793
      0.5    -1.96351002602142   4.93480220054468
      1      -0.577215664901533  1.64493406684823
      1.5    0.0364899739785765  0.934802200544679
      2.5    0.703156640645243   0.490357756100235
      3.76   1.18558616908522    0.304417166266483
      5      1.50611766843180    0.221322955737115
      10     2.25175258906672    0.105166335681686
      50     3.90198967342789    0.0202013332266971
      100.5  4.60517435258185    0.00999991666958310
    `,
    what: (x, column) => `${column}(${x})`,
    ours: (x, column) => (column === 'ψ' ? digamma(Number(x)) : trigamma(Number(x))),
    source: 'mpmath',
    where: 'digamma and psi(1, x)',
    seen: 'computed',
    differs: () => ({ by: '6e-14', because: 'The list has more digits than a double.' }),
  }),
);
