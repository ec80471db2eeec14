import { checkList, tableChecks } from '../checks.ts';
import { exactBinomialInterval } from './exactBinomialInterval.ts';

export default checkList(
  'exactBinomialInterval',
  tableChecks({
    columns: ['lower', 'upper'],
    text: `
      0/10     -            0.3084971
      1/10     0.002528579  0.4450161
      2/10     0.025210726  0.5560955
      3/10     0.066739511  0.6524529
      4/10     0.121552258  0.7376219
      682/925  0.7076683    0.7654066
    `,
    what: (seen, end) => `${end} end of the 95 % interval for ${seen}`,
    ours: (seen, end) => {
      const [successes = Number.NaN, trials = Number.NaN] = seen.split('/').map(Number);
      const { lowerShare, upperShare } = exactBinomialInterval({ successes, trials });
      return end === 'lower' ? lowerShare : upperShare;
    },
    source: 'r-binom-test',
    where: 'binom.test of R, and binom.exact of its package binom',
    seen: 'computed',
  }),
);
