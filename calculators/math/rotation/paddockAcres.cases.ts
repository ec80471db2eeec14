import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { paddockAcres } from './paddockAcres.ts';

const eatenShareByStay: Readonly<Record<string, number>> = { '1': 0.8, '2': 0.75, '3': 0.75, '5': 0.65, '7': 0.6 };

export default checkList('paddockAcres', [
  ...tableChecks({
    columns: ['750', '1000', '1500'],
    text: `
      1  0.042  0.031  0.021
      2  0.089  0.067  0.044
      3  0.133  0.100  0.067
      5  0.256  0.192  0.128
      7  0.389  0.292  0.194
    `,
    what: (days, available) => `Acres for one animal unit of 25 lb a day, ${days} days, ${available} lb available`,
    ours: (days, available) =>
      paddockAcres({
        dailyDemandLb: 25,
        stayDays: Number(days),
        availableLbPerAc: Number(available),
        grazedShare: needThere('paddockAcres', `share of ${days} days`, eatenShareByStay[days]),
      }),
    source: 'penn-state-agronomy-guide',
    where: 'Table 1.8-9',
    seen: 'print',
  }),
  {
    what: '68 cows of 24 lb, 2,129 lb an acre all eaten: acres a day',
    ours: () => paddockAcres({ dailyDemandLb: 68 * 24, stayDays: 1, availableLbPerAc: 2129, grazedShare: 1 }),
    printed: '0.77',
    source: 'kerr-center-fences',
    where: 'Acres a day at 100 percent utilization',
    seen: 'print',
  },
  {
    what: '100 cows, 45 cow-days an acre: acres a day',
    ours: () => paddockAcres({ dailyDemandLb: 100, stayDays: 1, availableLbPerAc: 45, grazedShare: 1 }),
    printed: '2.2',
    source: 'umaine-pasture-lesson-5',
    where: 'A simpler approach, step 5',
    seen: 'print',
  },
]);
