import { checkList } from '../checks.ts';
import { availableLbPerAc } from './availableLbPerAc.ts';

export default checkList('availableLbPerAc', [
  {
    what: '2,505 lb an acre clipped at grazing height: nothing more comes off',
    ours: () => availableLbPerAc({ clippedLbPerAc: 2505, clippedTo: 'stubble', stubbleLbPerAc: 900 }),
    printed: '2,505',
    source: 'umaine-pasture-lesson-1',
    where: 'Appendix E: clip at the height to which you would like to graze',
    seen: 'computed',
  },
]);
