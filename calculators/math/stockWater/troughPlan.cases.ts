import { checkList } from '../checks.ts';
import { troughPlan } from './troughPlan.ts';

const ohio = { source: 'ohioline-anr12-2003', where: 'the water trough or tank', seen: 'print' } as const;
/** A hundred head that drink a hundred gallons a day, so that the shares read as printed: farther off than 1,000 feet, and within 600. */
const farther = () => troughPlan({ dailyGal: 100, head: 100, walkFt: 1001 });
const nearer = () => troughPlan({ dailyGal: 100, head: 100, walkFt: 599 });

export default checkList('troughPlan', [
  { what: 'over 1,000 ft: least in the tank, percent of the day', ours: () => farther().tankGal, printed: '25', ...ohio },
  { what: 'over 1,000 ft: hours to refill it', ours: () => farther().tankGal / farther().flowGpm / 60, printed: '1', ...ohio },
  { what: 'over 1,000 ft: drink at one time, percent, from', ours: () => farther().atOnceLowHead, printed: '5', ...ohio },
  { what: 'over 1,000 ft: drink at one time, percent, to', ours: () => farther().atOnceHighHead, printed: '10', ...ohio },
  { what: 'feet of trough a head', ours: () => farther().edgeFt / farther().atOnceHighHead, printed: '2', ...ohio },
  { what: 'within 600 ft: hours in which the day’s water must come', ours: () => 100 / nearer().flowGpm / 60, printed: '4', ...ohio },
  { what: 'within 600 ft: drink at one time, percent, from', ours: () => nearer().atOnceLowHead, printed: '2', ...ohio },
  { what: 'within 600 ft: drink at one time, percent, to', ours: () => nearer().atOnceHighHead, printed: '4', ...ohio },
]);
