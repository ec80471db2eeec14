import { checkList } from '../checks.ts';
import { keptShare } from './keptShare.ts';

const chain = { source: 'ball-extending-grazing', where: 'Losses of dry matter at each step, after Collins', seen: 'transcription' } as const;

/** What the print says was lost by the end of storage, carried through feeding. */
const throughFeeding = (lostByStoragePercent: number, feedingPercent: number) => 100 * (1 - keptShare([lostByStoragePercent, feedingPercent]));

export default checkList('keptShare', [
  { what: 'Poor system: 58 % lost by the end of storage, 30 % at feeding', ours: () => throughFeeding(58, 30), printed: '71', ...chain },
  { what: 'Good system: 23 % lost by the end of storage, 8 % at feeding', ours: () => throughFeeding(23, 8), printed: '29', ...chain },
  {
    what: '600 bales of 1,700 lb, 15 % lost in storage: tons',
    ours: () => ((600 * 1700) / 2000) * keptShare([15]),
    printed: '434',
    source: 'warner-hay-supply-2022',
    where: 'Forage inventory',
    seen: 'print',
  },
]);
