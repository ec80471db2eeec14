import { checkList } from '../checks.ts';
import { baleVolumeFt3 } from './baleVolumeFt3.ts';
import { baleWeightLb } from './baleWeightLb.ts';

const densityLbPerFt3 = 11.21;
const round = (widthFt: number, diameterFt: number) =>
  baleWeightLb({ volumeFt3: baleVolumeFt3({ shape: 'round', diameterFt, widthFt }), densityLbPerFt3 });
const square = (widthFt: number, heightFt: number) =>
  baleWeightLb({ volumeFt3: baleVolumeFt3({ shape: 'rectangular', lengthFt: 8, widthFt, heightFt }), densityLbPerFt3 });

const banta = { source: 'banta-2012', where: 'Bale size and weight', seen: 'transcription' } as const;
const roundedDensity = (by: string) => ({ by, because: 'the density is printed rounded; 1,100 lb in a 5x5 bale is 11.205 lb a cubic foot' });

export default checkList('baleWeightLb', [
  { what: 'A 4x4 round bale at 11.21 lb a cubic foot', ours: () => round(4, 4), printed: '563', ...banta },
  { what: 'A 4x5 round bale at 11.21 lb a cubic foot', ours: () => round(4, 5), printed: '880', ...banta },
  { what: 'A 5x5 round bale at 11.21 lb a cubic foot', ours: () => round(5, 5), printed: '1,100', ...banta, differs: roundedDensity('0.6') },
  { what: 'A 5x6 round bale at 11.21 lb a cubic foot', ours: () => round(5, 6), printed: '1,584', ...banta, differs: roundedDensity('0.9') },
  { what: 'A 3x3x8 square bale at 11.21 lb a cubic foot', ours: () => square(3, 3), printed: '807', ...banta },
  { what: 'A 4x4x8 square bale at 11.21 lb a cubic foot', ours: () => square(4, 4), printed: '1,435', ...banta },
  {
    what: 'A 4x6 round bale at 11.21 lb a cubic foot',
    ours: () => round(4, 6),
    printed: '1,267',
    source: 'banta-agproud',
    where: 'Sizes of round bales',
    seen: 'print',
    differs: roundedDensity('0.9'),
  },
]);
