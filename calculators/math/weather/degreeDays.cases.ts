import { checkList } from '../checks.ts';
import { clippedDegreeDays, degreeDays } from './degreeDays.ts';

const corn = (minDegrees: number, maxDegrees: number): number => clippedDegreeDays({ minDegrees, maxDegrees, baseDegrees: 50, upperDegrees: 86 });

export default checkList('degreeDays', [
  { what: 'Corn, 65 to 90 °F', ours: () => corn(65, 90), printed: '25.5', source: 'waushara-degree-days-2018', where: 'day 1', seen: 'print' },
  { what: 'Corn, 46 to 72 °F', ours: () => corn(46, 72), printed: '11', source: 'waushara-degree-days-2018', where: 'day 2', seen: 'print' },
  { what: 'Corn, 42 to 63 °F', ours: () => corn(42, 63), printed: '6.5', source: 'waushara-degree-days-2018', where: 'day 3', seen: 'print' },
  {
    what: 'Corn, the three days together',
    ours: () => corn(65, 90) + corn(46, 72) + corn(42, 63),
    printed: '43',
    source: 'waushara-degree-days-2018',
    where: 'total',
    seen: 'print',
  },
  { what: 'Corn, 63 to 87 °F', ours: () => corn(63, 87), printed: '24.5', source: 'karhoff-2023', where: 'example', seen: 'print' },
  { what: 'Corn, 50 to 70 °F', ours: () => corn(50, 70), printed: '10', source: 'iowa-state-agron541', where: 'rules, first example', seen: 'print' },
  {
    what: 'By the mean, 61 to 83 °F, base 50 °F',
    ours: () => degreeDays({ minDegrees: 61, maxDegrees: 83, baseDegrees: 50 }),
    printed: '22',
    source: 'mdairy-degree-days',
    where: 'example',
    seen: 'print',
  },
]);
