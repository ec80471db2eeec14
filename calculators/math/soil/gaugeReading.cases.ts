import { checkList } from '../checks.ts';
import { gaugeReading } from './gaugeReading.ts';

const article = { source: 'duiker-2002', where: 'limits as summarised by Southeast Farm Press, read by hand', seen: 'computed' } as const;

export default checkList('gaugeReading', [
  { what: '80 psi: poor seed-to-soil contact', ours: () => gaugeReading(80), printed: 'loose', ...article },
  { what: '150 psi: where it should be', ours: () => gaugeReading(150), printed: 'easy', ...article },
  { what: '220 psi: roots starting to be inhibited', ours: () => gaugeReading(220), printed: 'slowing', ...article },
  { what: '310 psi: roots did not penetrate', ours: () => gaugeReading(310), printed: 'stopping', ...article },
]);
