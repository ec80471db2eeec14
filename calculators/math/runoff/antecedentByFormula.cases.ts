import { checkList, tableChecks } from '../checks.ts';
import { antecedentByFormula } from './antecedentByFormula.ts';

// The formulas were fitted to the table, so the table is the outside check and the stated misfit its tolerance.
const misfit = { 'hawkins-1985': { I: '1.8', III: '1.0' }, 'chow-1988': { I: '1.6', III: '0.9' } } as const;

const pair = (name: 'hawkins-1985' | 'chow-1988') =>
  tableChecks({
    columns: ['I', 'III'],
    text: `
      100  100  100
       90   78   96
       80   63   91
       70   51   85
       60   40   78
       50   31   70
       40   22   60
       30   15   50
    `,
    what: (curveNumber, condition) => `curve number ${curveNumber} to condition ${condition}, formulas of ${name}`,
    ours: (curveNumber, condition) => antecedentByFormula(Number(curveNumber), condition === 'I' ? 'dry' : 'wet', name),
    source: 'beven-2012',
    where: 'table B6.3.2',
    seen: 'transcription',
    differs: (_, condition) => ({
      by: misfit[name][condition === 'I' ? 'I' : 'III'],
      because: 'The formulas are a fit to the whole table and miss single rows.',
    }),
  });

export default checkList('antecedentByFormula', [...pair('hawkins-1985'), ...pair('chow-1988')]);
