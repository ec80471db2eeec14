import { checkList } from '../checks.ts';
import { availableFromHeight } from './availableFromHeight.ts';

export default checkList('availableFromHeight', [
  {
    what: '7 in, stubble 3 in, 300 lb an inch',
    ours: () => availableFromHeight({ heightIn: 7, stubbleIn: 3, poundsPerAcreInch: 300 }),
    printed: '1,200',
    source: 'umaine-pasture-lesson-1',
    where: 'Appendix D, example',
    seen: 'print',
  },
  {
    what: '7 in, stubble 3 in, 350 lb an inch',
    ours: () => availableFromHeight({ heightIn: 7, stubbleIn: 3, poundsPerAcreInch: 350 }),
    printed: '1,400',
    source: 'umaine-pasture-lesson-1',
    where: 'Appendix D, example',
    seen: 'print',
  },
  {
    what: '7 in down to 4 in, 300 lb an inch',
    ours: () => availableFromHeight({ heightIn: 7, stubbleIn: 4, poundsPerAcreInch: 300 }),
    printed: '900',
    source: 'penn-state-four-steps',
    where: 'Step 4',
    seen: 'print',
  },
  {
    what: '8 in, stubble 3 in, 9 cow-days an inch: cow-days an acre',
    ours: () => availableFromHeight({ heightIn: 8, stubbleIn: 3, poundsPerAcreInch: 9 }),
    printed: '45',
    source: 'umaine-pasture-lesson-5',
    where: 'A simpler approach, step 4',
    seen: 'print',
  },
]);
