import { checkList } from '../checks.ts';
import { clippedLbPerAc } from './clippedLbPerAc.ts';

const squareFeetPerSquareMeter = 1 / 0.3048 ** 2;
const kilogramsPerHectare = 0.45359237 / 0.40468564224;

export default checkList('clippedLbPerAc', [
  {
    what: '2.07 lb green from a square yard, 25 % dry matter',
    ours: () => clippedLbPerAc({ greenGrams: 2.07 * 453.59237, plots: 1, frameAreaFt2: 9, dryMatterPercent: 25 }),
    printed: '2,505',
    source: 'umaine-pasture-lesson-1',
    where: 'Appendix E, example',
    seen: 'print',
  },
  {
    what: 'Five plots of a quarter square meter, 200 g of dry matter in all, kilograms per hectare',
    ours: () =>
      clippedLbPerAc({ greenGrams: 42 + 45 + 36 + 39 + 38, plots: 5, frameAreaFt2: squareFeetPerSquareMeter / 4, dryMatterPercent: 100 }) *
      kilogramsPerHectare,
    printed: '1600',
    source: 'grazing-calculations-answers',
    where: 'Forage production, example A',
    seen: 'transcription',
  },
  {
    what: '200 g green from two square feet, 20 % dry matter, kilograms an acre',
    ours: () => clippedLbPerAc({ greenGrams: 200, plots: 1, frameAreaFt2: 2, dryMatterPercent: 20 }) * 0.45359237,
    printed: '871',
    source: 'sliworsky-forage',
    where: 'Sample and weigh',
    seen: 'print',
  },
  {
    what: 'The same, pounds an acre',
    ours: () => clippedLbPerAc({ greenGrams: 200, plots: 1, frameAreaFt2: 2, dryMatterPercent: 20 }),
    printed: '1,916',
    source: 'sliworsky-forage',
    where: 'Sample and weigh',
    seen: 'print',
    differs: { by: '4.7', because: 'the column takes 2.2 lb for a kilogram' },
  },
]);
