import { type Check, checkList, tableChecks } from '../checks.ts';
import { daysToMass, logisticGrowthLbPerAcDay, logisticMass, ratePerDay } from './logisticMass.ts';

const sward = { massLbPerAc: 1200, ceilingLbPerAc: 5000, ratePerDay: ratePerDay(100, 5000) };

/** Growth of a year at a rate of 0.5 a year and room for 500, the print cut to ten decimals; the formula does not ask in which unit. */
const herd = { ceilingLbPerAc: 500, ratePerDay: 0.5 };
const herdYears = [
  ['100.0', '40.0'],
  ['140.0', '50.4'],
  ['190.4', '58.94784'],
  ['249.34784000000002', '62.4995746873'],
  ['311.84741468733444', '58.6748972965'],
  ['370.5223119838273', '47.9743723141'],
  ['418.4966842979003', '34.1088673806'],
  ['452.605551678514', '21.4509904290'],
  ['474.056542107559', '12.2986659388'],
  ['486.35520804636263', '6.6362156294'],
] as const;
/** At a rate of 0.1 and room for 1,000. */
const class1114 = { source: 'okstate-logistic-growth', where: 'growth = rN[(K-N)/K]', seen: 'print' } as const;
const growthOf = (massLbPerAc: number) => logisticGrowthLbPerAcDay({ massLbPerAc, ceilingLbPerAc: 1000, ratePerDay: 0.1 });

export default checkList('logisticMass', [
  ...herdYears.map(
    ([start, printed]): Check => ({
      what: `growth at ${start}, ceiling 500, rate 0.5`,
      ours: () => logisticGrowthLbPerAcDay({ ...herd, massLbPerAc: Number(start) }),
      printed,
      source: 'cortina-population-2009',
      where: 'example, increase in population',
      seen: 'print',
    }),
  ),
  { what: 'growth at 10, ceiling 1,000, rate 0.1', ours: () => growthOf(10), printed: '0.99', ...class1114 },
  {
    what: 'growth at 10.99, ceiling 1,000, rate 0.1',
    ours: () => growthOf(10.99),
    printed: '1.086',
    ...class1114,
    differs: { by: '0.001', because: 'The page works on with 0.989 and cuts the result.' },
  },
  { what: 'growth at 12.076, ceiling 1,000, rate 0.1', ours: () => growthOf(12.076), printed: '1.19', ...class1114 },
  { what: 'growth at 543.72, ceiling 1,000, rate 0.1', ours: () => growthOf(543.72), printed: '24.81', ...class1114 },
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
