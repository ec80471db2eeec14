import { checkList } from '../checks.ts';
import { cfsToGallonsPerMinute, flowDepthIn, meanFlowCfs } from './flowDepthIn.ts';

const exact = {
  source: 'freedictionary-acre-inch',
  where: 'exact definitions of gallon, foot and acre, worked out apart',
  seen: 'computed',
} as const;

export default checkList('flowDepthIn', [
  { what: 'one cubic foot a second, gallons a minute', ours: () => cfsToGallonsPerMinute(1), printed: '448.83', ...exact },
  {
    what: 'one cubic foot a second for an hour, inches on an acre',
    ours: () => flowDepthIn({ flowGpm: cfsToGallonsPerMinute(1), hours: 1, areaAc: 1 }),
    printed: '0.9917',
    ...exact,
  },
  {
    what: 'one cubic foot a second for a day, feet on an acre',
    ours: () => flowDepthIn({ flowGpm: cfsToGallonsPerMinute(1), hours: 24, areaAc: 1 }) / 12,
    printed: '1.98347',
    ...exact,
  },
  {
    what: 'an inch off an acre in an hour, cubic feet a second',
    ours: () => meanFlowCfs({ depthIn: 1, areaAc: 1, hours: 1 }),
    printed: '1.0083',
    ...exact,
  },
]);
