import { checkList } from '../checks.ts';
import { grownShare } from './grownShare.ts';
import { growthCurveFromAnswers } from './growthCurveFromAnswers.ts';

const grownBy = (dayOfYear: number, startMonth: number, bestMonth: number, quitMonth: number) =>
  100 * grownShare(growthCurveFromAnswers({ startMonth, bestMonth, quitMonth, fallFlush: 'none' }), dayOfYear);

export default checkList('growthCurveFromAnswers', [
  {
    what: 'Starts April, best May, quits September: percent grown by 1 July, North Dakota',
    ours: () => grownBy(181, 4, 5, 9),
    printed: '80',
    source: 'nrcs-g058cy500nd',
    where: 'Growth curve',
    seen: 'print',
    differs: { by: '3.5', because: 'four answers stand in for twelve numbers' },
  },
  {
    what: 'Starts April, best June, quits September: by 1 July, Colorado 67B',
    ours: () => grownBy(181, 4, 6, 9),
    printed: '68',
    source: 'nrcs-colorado-curves',
    where: 'Upland fine, eastern Colorado',
    seen: 'transcription',
    differs: { by: '4.5', because: 'four answers stand in for twelve numbers' },
  },
  {
    what: 'Starts March, best June, quits September: by 1 July, Colorado 69 coarse',
    ours: () => grownBy(181, 3, 6, 9),
    printed: '72',
    source: 'nrcs-colorado-curves',
    where: 'Upland coarse, row A',
    seen: 'transcription',
    differs: { by: '4.5', because: 'four answers stand in for twelve numbers' },
  },
  {
    what: 'Starts April, best June, quits August: by 1 July, Colorado 69 coarse',
    ours: () => grownBy(181, 4, 6, 8),
    printed: '75',
    source: 'nrcs-colorado-curves',
    where: 'Upland coarse, row B',
    seen: 'transcription',
    differs: { by: '2', because: 'four answers stand in for twelve numbers' },
  },
  {
    what: 'Starts March, best June, quits September: by 1 July, Colorado 69 fine',
    ours: () => grownBy(181, 3, 6, 9),
    printed: '65',
    source: 'nrcs-colorado-curves',
    where: 'Upland fine, row A',
    seen: 'transcription',
    differs: { by: '3.5', because: 'four answers stand in for twelve numbers' },
  },
]);
