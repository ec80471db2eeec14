import { checkList, tableChecks } from '../checks.ts';
import { regularizedIncompleteGamma, upperRegularizedIncompleteGamma } from './regularizedIncompleteGamma.ts';

const fortyDigits = tableChecks({
  columns: ['P', 'Q'],
  text: `
    0.1,0.01    0.662621259954480    0.337378740045520
    0.5,0.1     0.345279153981423    0.654720846018577
    0.5,0.5     0.682689492137086    0.317310507862914
    0.5,2       0.954499736103642    0.0455002638963584
    1,0.1       0.0951625819640404   0.904837418035960
    1,1         0.632120558828558    0.367879441171442
    1,5         0.993262053000915    0.00673794699908547
    1.5,0.5     0.198748043098799    0.801251956901201
    2,1         0.264241117657115    0.735758882342885
    2,3         0.800851726528544    0.199148273471456
    2.5,2.5     0.584119813004492    0.415880186995508
    3,1         0.0803013970713942   0.919698602928606
    3.76,6.06   0.879196574290083    0.120803425709917
    5,2         0.0526530173437112   0.947346982656289
    5,5         0.559506714934788    0.440493285065212
    5,10        0.970747311923039    0.0292526880769611
    10,3        0.00110248813011548  0.998897511869885
    10,10       0.542070285528148    0.457929714471852
    10,20       0.995004587691692    0.00499541230830759
    20,10       0.00345434197585681  0.996545658024143
    50,40       0.0703350666593950   0.929664933340605
    50,60       0.915593318906308    0.0844066810936918
    100,100     0.513298798279149    0.486701201720851
    100,130     0.997249591632693    0.00275040836730653
    1000,1000   0.504205244180216    0.495794755819784
    0.01,1e-10  0.798861091433605    0.201138908566395
  `,
  what: (arguments_, column) => `${column}(a, x) for a, x = ${arguments_}`,
  ours: (arguments_, column) => {
    const [shape = Number.NaN, x = Number.NaN] = arguments_.split(',').map(Number);
    return column === 'P' ? regularizedIncompleteGamma(shape, x) : upperRegularizedIncompleteGamma(shape, x);
  },
  source: 'mpmath',
  where: 'gammainc, regularized',
  seen: 'computed',
  // Doubles carry about 16 digits; the list goes to 15 decimals and beyond.
  differs: () => ({ by: '1e-14', because: 'The list has more digits than a double.' }),
});

/** Half the chi-square value at half the degrees of freedom is the same function. */
const chiSquare = tableChecks({
  columns: ['1', '2', '3', '4', '5', '6', '10', '30', '100'],
  text: `
    0.90   -      .211   .584   1.064  1.610  2.204  4.865  20.599  82.358
    0.95   -      .103   .352   .711   1.145  1.635  3.940  18.493  77.929
    0.975  -      .051   .216   .484   .831   1.237  3.247  16.791  74.222
    0.99   -      .020   .115   .297   .554   .872   2.558  14.953  70.065
  `,
  what: (probability, degrees) => `chi-square value with ${degrees} degrees of freedom that ${probability} of cases exceed`,
  ours: (probability, degrees) => chiSquareValue(Number(probability), Number(degrees)),
  source: 'nist-chi-square',
  where: 'lower critical values',
  seen: 'transcription',
});

/** The value that a share of cases exceeds, by halving: only the function under check is called. */
function chiSquareValue(exceeding: number, degrees: number): number {
  let low = 0;
  let high = 1000;
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (upperRegularizedIncompleteGamma(degrees / 2, middle / 2) > exceeding) low = middle;
    else high = middle;
  }
  return low;
}

export default checkList('regularizedIncompleteGamma', [...fortyDigits, ...chiSquare]);
