import { growthCurves } from '../../tables/growthCurves.ts';
import { checkList } from '../checks.ts';
import { needThere } from '../need.ts';
import { grownShare } from './grownShare.ts';

const curve = (key: string): readonly number[] =>
  needThere(
    'grownShare',
    key,
    growthCurves.find((each) => each.curve === key),
  ).percent;

export default checkList('grownShare', [
  {
    what: 'North Dakota, cool-season grass: percent grown by 1 July',
    ours: () => 100 * grownShare(curve('nd0002'), 181),
    printed: '80',
    source: 'ndsu-precipitation-2020',
    where: 'Cool-season plants by 1 July',
    seen: 'print',
  },
  {
    what: 'Kansas, smooth brome: percent grown through May',
    ours: () => 100 * grownShare(curve('smooth-brome-kansas'), 151),
    printed: '70',
    source: 'kansas-grazingland-2001',
    where: 'Smooth brome through May',
    seen: 'transcription',
  },
]);
