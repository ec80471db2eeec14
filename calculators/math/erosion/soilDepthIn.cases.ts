import { checkList } from '../checks.ts';
import { soilDepthIn, tonsPerInchAcre } from './soilDepthIn.ts';
import { soilLossMetric } from './soilLossMetric.ts';

export default checkList('soilDepthIn', [
  {
    what: 'an inch of something as heavy as water on an acre, tons',
    ours: () => tonsPerInchAcre(1),
    printed: '113.31',
    source: 'manske-inch-of-rain',
    where: 'weight of one inch of rain',
    seen: 'transcription',
  },
  {
    what: 'silt loam of 1.33 g/cm3, 0.56 ft deep, pounds an acre',
    ours: () => 2000 * 0.56 * 12 * tonsPerInchAcre(1.33),
    printed: '2,024,458',
    source: 'penn-state-furrow-slice',
    where: 'weight of an acre furrow slice',
    seen: 'print',
    differs: { by: '1000', because: 'The page takes water at 62.4 lb a cubic foot and cuts 82.992 to 82.99.' },
  },
  {
    what: 'depth of one ton an acre at 1.3 g/cm3, inches',
    ours: () => soilDepthIn(1, 1.3),
    printed: '0.00679',
    source: 'manske-inch-of-rain',
    where: 'weight of one inch of rain, times 1.3, turned round',
    seen: 'computed',
  },
  {
    what: 'depth of one tonne a hectare at 1.3 g/cm3, mm',
    ours: () => (25.4 * soilDepthIn(1, 1.3)) / soilLossMetric(1),
    printed: '0.0769',
    source: 'foster-1981',
    where: 'exact definitions: 1/(10 x 1.3) mm',
    seen: 'computed',
  },
]);
