import { checkList, tableChecks } from '../checks.ts';
import { normalProbability } from './normalProbability.ts';

const fortyDigits = tableChecks({
  columns: ['Φ'],
  text: `
    -5     2.86651571879194e-7
    -4     3.16712418331199e-5
    -3     .00134989803163009
    -2.5   .00620966532577614
    -2     .0227501319481792
    -1.5   .0668072012688581
    -1     .158655253931457
    -.84   .200454193260450
    -.5    .308537538725987
    -.1    .460172162722971
    0      .5
    .5     .691462461274013
    1      .841344746068543
    1.96   .975002104851780
    2      .977249868051821
    3      .998650101968370
  `,
  what: (z) => `Φ(${z})`,
  ours: (z) => normalProbability(Number(z)),
  source: 'mpmath',
  where: 'ncdf',
  seen: 'computed',
  differs: () => ({ by: '1e-15', because: 'The list has more digits than a double.' }),
});

const printedTable = tableChecks({
  columns: ['0', '0.01', '0.02', '0.03', '0.04', '0.05', '0.06', '0.07', '0.08', '0.09'],
  text: `
    -3.0  0.00135  0.00131  0.00126  0.00122  0.00118  0.00114  0.00111  0.00107  0.00103  0.001
    -2.5  0.00621  0.00604  0.00587  0.0057   0.00554  0.00539  0.00523  0.00508  0.00494  0.0048
  `,
  what: (row, column) => `Share below ${(Number(row) - Number(column)).toFixed(2)}`,
  ours: (row, column) => normalProbability(Number(row) - Number(column)),
  source: 'math-com-normal',
  where: 'standard normal probabilities',
  seen: 'print',
  differs: (row, column) =>
    row === '-3.0' && column === '0.08' ? { by: '5.01e-6', because: 'The value is 0.00103500; the table rounds it down.' } : undefined,
});

export default checkList('normalProbability', [...fortyDigits, ...printedTable]);
