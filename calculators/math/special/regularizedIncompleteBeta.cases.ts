import { checkList, tableChecks } from '../checks.ts';
import { regularizedIncompleteBeta } from './regularizedIncompleteBeta.ts';

export default checkList(
  'regularizedIncompleteBeta',
  tableChecks({
    columns: ['I'],
    text: `
      0.001,0.5,0.5  0.02013504163338
      0.1,3,28  0.5886487604405
      0.1,4,27  0.3525608282082
      0.2,1,3  0.4880000000000
      0.25,0.5,5  0.9021453857422
      0.3,10,20  0.3640040810719
      0.5,2,3  0.6875000000000
      0.5,50,50  0.5000000000000
      0.9,30,1  0.04239115827522
      0.95,20,2.5  0.8312706098496
      0.5,500,510  0.6235397566557
      0.999,0.1,20  1.000000000000
    `,
    what: (arguments_) => `I(x; a, b) for x, a, b = ${arguments_}`,
    ours: (arguments_) => {
      const [x = Number.NaN, a = Number.NaN, b = Number.NaN] = arguments_.split(',').map(Number);
      return regularizedIncompleteBeta(x, a, b);
    },
    source: 'mpmath',
    where: 'betainc, regularized',
    seen: 'computed',
  }),
);
