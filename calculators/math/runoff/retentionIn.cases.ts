import { checkList } from '../checks.ts';
import { retentionIn } from './retentionIn.ts';

export default checkList('retentionIn', [
  { what: 'curve number 80', ours: () => retentionIn(80), printed: '2.5', source: 'uonbi-runoff-exercise', where: 'S', seen: 'print' },
]);
