import { checkList } from '../checks.ts';
import { frameAreaFt2 } from './frameAreaFt2.ts';

export default checkList('frameAreaFt2', [
  {
    what: 'Square of 26.25 in, as a frame of 4.8 square feet',
    ours: () => frameAreaFt2({ shape: 'rectangle', lengthIn: 26.25, widthIn: 26.25 }),
    printed: '4.8',
    source: 'county-aum-handout',
    where: 'Square or hoop, times 20',
    seen: 'transcription',
  },
  {
    what: 'Hoop 93 in round, as a frame of 4.8 square feet',
    ours: () => frameAreaFt2({ shape: 'hoop-around', circumferenceIn: 93 }),
    printed: '4.8',
    source: 'county-aum-handout',
    where: 'Square or hoop, times 20',
    seen: 'transcription',
  },
  {
    what: 'Frame of 11.5 by 22 in, called 1.92 square feet',
    ours: () => frameAreaFt2({ shape: 'rectangle', lengthIn: 11.5, widthIn: 22 }),
    printed: '1.92',
    source: 'moseley-forage',
    where: 'Frame for grams times 50',
    seen: 'transcription',
    differs: { by: '0.17', because: 'the label fits 11.5 by 24 in; 11.5 by 22 is 1.757' },
  },
  {
    what: 'Hoop 131.8 in round, square feet',
    ours: () => frameAreaFt2({ shape: 'hoop-around', circumferenceIn: 131.8 }),
    printed: '9.60',
    source: 'nrph-2003',
    where: 'Chapter 4, hoop sizes',
    seen: 'memory',
  },
]);
