import { checkList } from '../checks.ts';
import { needThere } from '../need.ts';
import { droughtEvents } from './droughtEvents.ts';

export default checkList('droughtEvents', [
  {
    what: 'A spell that only reaches −0.99 is no drought',
    ours: () => droughtEvents([-0.5, -0.99, 0.4]).length,
    printed: '0',
    source: 'ndmc-ranch-plan-monitoring',
    where: 'standard precipitation index: −1.0 or less',
    seen: 'print',
  },
  {
    what: 'A spell that reaches −1.0 is one, and ends when the index turns positive',
    ours: () => needThere('droughtEvents', 'first event', droughtEvents([-0.5, -1.0, -0.1, 0.1, -0.2])[0]).months,
    printed: '3',
    source: 'ndmc-ranch-plan-monitoring',
    where: 'standard precipitation index: ends when it becomes positive',
    seen: 'print',
  },
]);
