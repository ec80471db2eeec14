import { checkList } from '../checks.ts';
import { gapRange } from './gapRange.ts';

const printed = { source: 'newcombe-1998-difference', where: 'table II, method 10', seen: 'transcription' } as const;
/** Score intervals of 48 of 80, 56 of 70, 3 of 10 and 9 of 10, from another program. */
const first = gapRange({ earlier: { value: 0.6, low: 0.490455, high: 0.700382 }, later: { value: 0.8, low: 0.691834, high: 0.876953 } });
const second = gapRange({ earlier: { value: 0.3, low: 0.107791, high: 0.603222 }, later: { value: 0.9, low: 0.59585, high: 0.982124 } });

export default checkList('gapRange', [
  { what: '0.6 and 0.8, each with its range: low end of the gap', ours: () => first.low, printed: '0.0524', ...printed },
  { what: 'the same, high end', ours: () => first.high, printed: '0.3339', ...printed },
  { what: '0.3 and 0.9, each with its range: low end of the gap', ours: () => second.low, printed: '0.1705', ...printed },
  { what: 'the same, high end', ours: () => second.high, printed: '0.8090', ...printed },
]);
