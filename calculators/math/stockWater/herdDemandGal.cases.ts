import { type Check, checkList } from '../checks.ts';
import { type Drinkers, herdDemandGal } from './herdDemandGal.ts';

const victoria = { source: 'bekker-stock-water-2024', where: 'how much do you need', seen: 'print' } as const;
/** Liters stand for gallons in these rows: the sums are the same. */
const liters = (head: number, perHead: number, days: number): Drinkers => ({ head, galPerHeadDay: perHead, days });

const ewes = liters(1000, 6, 150);
const rams = liters(25, 10, 150);
const lambs = liters(500, 4, 70);
const cows = liters(100, 100, 150);
const calves = liters(100, 4, 150);
const bulls = liters(3, 100, 150);

const each = (name: string, row: Drinkers, perDay: string, total: string): Check[] => [
  { what: `${name}, liters a day`, ours: () => herdDemandGal([row]).perDayGal, printed: perDay, ...victoria },
  { what: `${name}, liters in all`, ours: () => herdDemandGal([row]).totalGal, printed: total, ...victoria },
];

export default checkList('herdDemandGal', [
  ...each('1,000 ewes', ewes, '6000', '900,000'),
  ...each('25 rams', rams, '250', '37,500'),
  ...each('500 lambs for 70 days', lambs, '2000', '140,000'),
  { what: 'the flock, liters in all', ours: () => herdDemandGal([ewes, rams, lambs]).totalGal, printed: '1,077,500', ...victoria },
  ...each('100 cows', cows, '10,000', '1,500,000'),
  ...each('100 calves', calves, '400', '60,000'),
  ...each('3 bulls', bulls, '300', '45,000'),
  { what: 'the herd, liters in all', ours: () => herdDemandGal([cows, calves, bulls]).totalGal, printed: '1,605,000', ...victoria },
  {
    what: '80 cows with calves at 15 gallons, gallons a day',
    ours: () => herdDemandGal([{ head: 80, galPerHeadDay: 15, days: 1 }]).perDayGal,
    printed: '1200',
    source: 'alberta-pasture-pipeline',
    where: 'step 1',
    seen: 'print',
  },
]);
