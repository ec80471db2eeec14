import { checkList } from '../checks.ts';
import { simpleInterestUsd } from './simpleInterestUsd.ts';

export default checkList('simpleInterestUsd', [
  {
    what: '$380 for half a year at 10 percent, dollars',
    ours: () => simpleInterestUsd(380, 10, 182.5),
    printed: '19',
    source: 'harp-stocker-slides',
    where: 'purchasing of calves',
    seen: 'transcription',
  },
]);
