import { checkList } from '../checks.ts';
import { pricePerTonFromBale } from './pricePerTonFromBale.ts';

export default checkList('pricePerTonFromBale', [
  {
    what: '$50 for a bale of 1,100 lb',
    ours: () => pricePerTonFromBale({ pricePerBale: 50, baleLb: 1100 }),
    printed: '90.91',
    source: 'banta-2012',
    where: 'Price per ton',
    seen: 'transcription',
  },
  {
    what: '$50 for a bale of 563 lb',
    ours: () => pricePerTonFromBale({ pricePerBale: 50, baleLb: 563 }),
    printed: '177.56',
    source: 'banta-2012',
    where: 'Price per ton',
    seen: 'transcription',
    differs: { by: '0.07', because: 'the print multiplies a price per pound that is already rounded' },
  },
]);
