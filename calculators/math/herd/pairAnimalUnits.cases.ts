import { checkList } from '../checks.ts';
import { pairAnimalUnits } from './pairAnimalUnits.ts';

export default checkList('pairAnimalUnits', [
  {
    what: 'Nebraska: cow of 1,200 lb, calf of 300 lb over three months',
    ours: () => pairAnimalUnits({ cowLb: 1200, calfLb: 300, calfMonths: 4, convention: 'weights' }),
    printed: '1.5',
    source: 'unl-stocking-creep',
    where: 'Pair',
    seen: 'print',
  },
  {
    what: 'eXtension: cow of 1,200 lb, calf under four months',
    ours: () => pairAnimalUnits({ cowLb: 1200, calfLb: 250, calfMonths: 3, convention: 'fixed' }),
    printed: '1.2',
    source: 'extension-pasture-rent',
    where: 'Answer',
    seen: 'print',
  },
  {
    what: 'eXtension: cow of 1,200 lb, calf over four months',
    ours: () => pairAnimalUnits({ cowLb: 1200, calfLb: 400, calfMonths: 5, convention: 'fixed' }),
    printed: '1.5',
    source: 'extension-pasture-rent',
    where: 'Answer',
    seen: 'print',
  },
  {
    what: 'California: cow of 1,200 lb, calf of 400 lb by weaning',
    ours: () => pairAnimalUnits({ cowLb: 1200, calfLb: 400, calfMonths: 6, convention: 'weights' }),
    printed: '1.6',
    source: 'george-lile-stocking',
    where: 'Animal units',
    seen: 'transcription',
  },
  {
    what: 'California: cow of 1,200 lb, calf of 500 lb by weaning',
    ours: () => pairAnimalUnits({ cowLb: 1200, calfLb: 500, calfMonths: 7, convention: 'weights' }),
    printed: '1.7',
    source: 'george-lile-stocking',
    where: 'Animal units',
    seen: 'transcription',
  },
  {
    what: 'Handbook: cow of 1,000 lb with calf',
    ours: () => pairAnimalUnits({ cowLb: 1000, calfLb: 300, calfMonths: 5, convention: 'within' }),
    printed: '1.00',
    source: 'nrph-2003',
    where: 'Chapter 6, animal-unit equivalents guide',
    seen: 'transcription',
  },
]);
