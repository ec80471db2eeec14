import { checkList } from '../checks.ts';
import { dailyIntakeLb } from './dailyIntakeLb.ts';

const each = (weightLb: number, intakePercent: number) => dailyIntakeLb({ head: 1, weightLb, intakePercent });

export default checkList('dailyIntakeLb', [
  {
    what: 'A 700-lb calf at 3 %',
    ours: () => each(700, 3),
    printed: '21',
    source: 'mullenix-2022',
    where: 'Growing cattle',
    seen: 'print',
  },
  {
    what: 'A 1,200-lb cow at 3.5 %',
    ours: () => each(1200, 3.5),
    printed: '42',
    source: 'mccutcheon-growth',
    where: 'Growth against intake',
    seen: 'print',
  },
  {
    what: 'A 1,000-lb animal unit at 2.6 %',
    ours: () => each(1000, 2.6),
    printed: '26',
    source: 'extension-animal-units-2015',
    where: 'Animal unit',
    seen: 'print',
  },
  {
    what: 'A 1,000-lb cow at 2.5 % for 30 days',
    ours: () => 30 * each(1000, 2.5),
    printed: '750',
    source: 'oregon-state-pasture-capacity',
    where: 'Animal-unit month',
    seen: 'print',
  },
]);
