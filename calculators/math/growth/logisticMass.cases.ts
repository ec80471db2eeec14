import { checkList, tableChecks } from '../checks.ts';
import { daysToMass, logisticGrowthLbPerAcDay, logisticMass, ratePerDay } from './logisticMass.ts';

const sward = { massLbPerAc: 1200, ceilingLbPerAc: 5000, ratePerDay: ratePerDay(100, 5000) };

export default checkList('logisticMass', [
  ...tableChecks({
    columns: ['mass', 'growth'],
    text: `
      0   1200       72.96
      10  2063.6640  96.9538
      20  3050.0098  95.1598
      30  3884.1784  -
      40  4428.3829  40.5014
      60  4873.0053  -
    `,
    what: (days, column) => `${column} after ${days} days from 1200, ceiling 5000, best day 100`,
    ours: (days, column) => {
      const massLbPerAc = logisticMass({ ...sward, days: Number(days) });
      return column === 'mass' ? massLbPerAc : logisticGrowthLbPerAcDay({ ...sward, massLbPerAc });
    },
    source: 'mpmath',
    where: 'closed form of the logistic curve',
    seen: 'computed',
  }),
  {
    what: 'Days from 1200 to half of 5000',
    ours: () => daysToMass({ ...sward, targetLbPerAc: 2500 }),
    printed: '14.408494',
    source: 'mpmath',
    where: 'closed form of the logistic curve, solved for time',
    seen: 'computed',
  },
]);
