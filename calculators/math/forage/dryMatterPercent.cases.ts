import { checkList } from '../checks.ts';
import { dryMatterPercent } from './dryMatterPercent.ts';

export default checkList('dryMatterPercent', [
  {
    what: '9 oz to 3 oz on a plate of 1 oz',
    ours: () => dryMatterPercent({ wetWeight: 9, dryWeight: 3, plateWeight: 1 }),
    printed: '25',
    source: 'umaine-pasture-lesson-1',
    where: 'Appendix E, example',
    seen: 'print',
  },
  {
    what: '100 g to 20 g',
    ours: () => dryMatterPercent({ wetWeight: 100, dryWeight: 20, plateWeight: 0 }),
    printed: '20',
    source: 'sliworsky-forage',
    where: 'Sample and weigh',
    seen: 'print',
  },
]);
