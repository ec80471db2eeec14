import { checkList } from '../checks.ts';
import { animalUnits } from './animalUnits.ts';

export default checkList('animalUnits', [
  {
    what: 'Linear, 1,400 lb',
    ours: () => animalUnits(1400, 'linear'),
    printed: '1.4',
    source: 'unl-stocking-creep',
    where: '100 cows of 1,400 lb are 140 units',
    seen: 'print',
  },
  {
    what: 'Linear, steer of 700 lb',
    ours: () => animalUnits(700, 'linear'),
    printed: '0.7',
    source: 'texas-animal-units',
    where: 'Note below the chart',
    seen: 'transcription',
  },
  {
    what: 'Linear, cow of 1,200 lb',
    ours: () => animalUnits(1200, 'linear'),
    printed: '1.2',
    source: 'texas-animal-units',
    where: 'Note below the chart',
    seen: 'transcription',
  },
  {
    what: 'Linear, nursing cow of 1,200 lb',
    ours: () => animalUnits(1200, 'linear'),
    printed: '1.2',
    source: 'extension-pasture-rent',
    where: '0.1 for each 100 lb',
    seen: 'print',
  },
  {
    what: 'Metabolic, 1,000 lb',
    ours: () => animalUnits(1000, 'metabolic'),
    printed: '1.00',
    source: 'manske-1998',
    where: 'Definition of the unit',
    seen: 'print',
  },
  {
    what: 'Metabolic, 500 lb',
    ours: () => animalUnits(500, 'metabolic'),
    printed: '0.595',
    source: 'manske-1998',
    where: 'Method, worked out apart',
    seen: 'computed',
  },
  {
    what: 'Metabolic, 1,400 lb',
    ours: () => animalUnits(1400, 'metabolic'),
    printed: '1.287',
    source: 'manske-1998',
    where: 'Method, worked out apart',
    seen: 'computed',
  },
]);
