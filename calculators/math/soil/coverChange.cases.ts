import { checkList } from '../checks.ts';
import { coverChange } from './coverChange.ts';

const printed = { source: 'newcombe-1998-difference', where: 'table II, method 10', seen: 'transcription' } as const;
const first = coverChange({ earlier: { hits: 48, points: 80 }, later: { hits: 56, points: 70 }, confidencePercent: 95 });
const second = coverChange({ earlier: { hits: 3, points: 10 }, later: { hits: 9, points: 10 }, confidencePercent: 95 });

export default checkList('coverChange', [
  { what: '56 of 70 after 48 of 80: low end', ours: () => first.low, printed: '0.0524', ...printed },
  { what: 'the same, high end', ours: () => first.high, printed: '0.3339', ...printed },
  { what: '9 of 10 after 3 of 10: low end', ours: () => second.low, printed: '0.1705', ...printed },
  { what: 'the same, high end', ours: () => second.high, printed: '0.8090', ...printed },
]);
