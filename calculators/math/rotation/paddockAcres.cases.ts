import { checkList, tableChecks } from '../checks.ts';
import { paddockAcres } from './paddockAcres.ts';

const eatenShareByStay: Readonly<Record<string, number>> = { '1': 0.8, '2': 0.75, '3': 0.75, '5': 0.65, '7': 0.6 };

export default checkList(
  'paddockAcres',
  tableChecks({
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
        grazedShare: eatenShareByStay[days] ?? Number.NaN,
      }),
    source: 'penn-state-agronomy-guide',
    where: 'Table 1.8-9',
    seen: 'print',
  }),
);
