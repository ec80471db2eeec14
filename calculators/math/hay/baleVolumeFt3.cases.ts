import { checkList } from '../checks.ts';
import { baleVolumeFt3 } from './baleVolumeFt3.ts';

const round = (widthFt: number, diameterFt: number) => baleVolumeFt3({ shape: 'round', diameterFt, widthFt });
const shareOf5x5 = (widthFt: number, diameterFt: number) => (100 * round(widthFt, diameterFt)) / round(5, 5);

const alberta = { source: 'alberta-bale-moisture', where: 'Table 1', seen: 'print' } as const;
const banta = { source: 'banta-2012', where: 'Bale size and weight', seen: 'transcription' } as const;
const florida = { source: 'hersom-an326', where: 'Bale size against a 5x5 bale', seen: 'print' } as const;
const agproud = { source: 'banta-agproud', where: 'Sizes of round bales', seen: 'print' } as const;

export default checkList('baleVolumeFt3', [
  { what: 'Round bale 4 ft across, 4 ft wide', ours: () => round(4, 4), printed: '50', ...alberta },
  { what: 'Round bale 4 ft across, 5 ft wide', ours: () => round(5, 4), printed: '63', ...alberta },
  { what: 'Round bale 5 ft across, 4 ft wide', ours: () => round(4, 5), printed: '79', ...alberta },
  { what: 'Round bale 5 ft across, 5 ft wide', ours: () => round(5, 5), printed: '98', ...alberta },
  { what: 'Round bale 6 ft across, 5 ft wide', ours: () => round(5, 6), printed: '141', ...alberta },
  {
    what: 'Rectangular bale 2.7 by 3 by 7 ft',
    ours: () => baleVolumeFt3({ shape: 'rectangular', lengthFt: 7, widthFt: 3, heightFt: 2.7 }),
    printed: '56',
    ...alberta,
    differs: { by: '0.8', because: 'the sides are printed rounded: 32 in is 2.67 ft, which gives 56' },
  },
  { what: 'A 4x4 bale, percent of a 5x5', ours: () => shareOf5x5(4, 4), printed: '51', ...banta },
  { what: 'A 5x6 bale, percent of a 5x5', ours: () => shareOf5x5(5, 6), printed: '144', ...banta },
  { what: 'A 5x6 bale, percent more than a 5x5', ours: () => shareOf5x5(5, 6) - 100, printed: '44', ...florida },
  { what: 'A 4x5 bale', ours: () => round(4, 5), printed: '79', ...agproud },
  { what: 'A 4x6 bale', ours: () => round(4, 6), printed: '113', ...agproud },
  { what: 'A 5x5 bale', ours: () => round(5, 5), printed: '98', ...agproud },
  { what: 'A 5x6 bale', ours: () => round(5, 6), printed: '141', ...agproud },
  { what: 'A 4x4 bale where a 5x5 is worth $50', ours: () => (50 * round(4, 4)) / round(5, 5), printed: '25.60', ...banta },
  { what: 'A 5x6 bale where a 5x5 is worth $50', ours: () => (50 * round(5, 6)) / round(5, 5), printed: '72', ...banta },
]);
