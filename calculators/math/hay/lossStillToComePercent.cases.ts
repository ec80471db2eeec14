import { checkList } from '../checks.ts';
import { lossStillToComePercent } from './lossStillToComePercent.ts';

const chain = { source: 'ball-extending-grazing', where: 'Losses of dry matter at each step, after Collins', seen: 'transcription' } as const;

export default checkList('lossStillToComePercent', [
  {
    what: 'Poor system: 58 % lost by the end of storage, 71 % by the end of feeding: the feeding alone',
    ours: () => lossStillToComePercent({ lossAtWeighingPercent: 58, lossAtFeedingPercent: 71 }),
    printed: '30',
    ...chain,
    differs: { by: '1', because: 'the two sums are printed rounded' },
  },
  {
    what: 'Good system: 23 % lost by the end of storage, 29 % by the end of feeding: the feeding alone',
    ours: () => lossStillToComePercent({ lossAtWeighingPercent: 23, lossAtFeedingPercent: 29 }),
    printed: '8',
    ...chain,
  },
]);
