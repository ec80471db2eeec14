import { checkList } from '../checks.ts';
import { clipFactor } from './clipFactor.ts';
import { frameAreaFt2 } from './frameAreaFt2.ts';

const squareFeetPerSquareMeter = 1 / 0.3048 ** 2;
const kilogramsPerHectare = 0.45359237 / 0.40468564224;

export default checkList('clipFactor', [
  {
    what: 'Frame of 1.92 square feet',
    ours: () => clipFactor({ frameAreaFt2: 1.92, plots: 1 }),
    printed: '50',
    source: 'moseley-forage',
    where: 'Grams times 50',
    seen: 'transcription',
  },
  {
    what: 'Square of 26.25 in',
    ours: () => clipFactor({ frameAreaFt2: frameAreaFt2({ shape: 'rectangle', lengthIn: 26.25, widthIn: 26.25 }), plots: 1 }),
    printed: '20',
    source: 'county-aum-handout',
    where: 'Square or hoop, times 20',
    seen: 'transcription',
  },
  {
    what: 'Hoop 93 in round',
    ours: () => clipFactor({ frameAreaFt2: frameAreaFt2({ shape: 'hoop-around', circumferenceIn: 93 }), plots: 1 }),
    printed: '20',
    source: 'county-aum-handout',
    where: 'Square or hoop, times 20',
    seen: 'transcription',
  },
  {
    what: 'Square yard',
    ours: () => clipFactor({ frameAreaFt2: 9, plots: 1 }),
    printed: '10.7',
    source: 'luling-foundation',
    where: 'Yard square, times 10.7',
    seen: 'print',
  },
  {
    what: 'Half-meter square, kilograms per hectare for a gram',
    ours: () => clipFactor({ frameAreaFt2: squareFeetPerSquareMeter / 4, plots: 1 }) * kilogramsPerHectare,
    printed: '40',
    source: 'farmnews-nz-2012',
    where: 'Grams times 40',
    seen: 'print',
  },
  {
    what: 'Frame of 0.96 square feet',
    ours: () => clipFactor({ frameAreaFt2: 0.96, plots: 1 }),
    printed: '100',
    source: 'nrph-2003',
    where: 'Chapter 4, plot sizes',
    seen: 'memory',
  },
  {
    what: 'Frame of 2.4 square feet',
    ours: () => clipFactor({ frameAreaFt2: 2.4, plots: 1 }),
    printed: '40',
    source: 'nrph-2003',
    where: 'Chapter 4, plot sizes',
    seen: 'memory',
  },
  {
    what: 'Frame of 9.6 square feet',
    ours: () => clipFactor({ frameAreaFt2: 9.6, plots: 1 }),
    printed: '10',
    source: 'nrph-2003',
    where: 'Chapter 4, plot sizes',
    seen: 'memory',
  },
]);
