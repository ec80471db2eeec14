import { checkList } from '../checks.ts';
import { usableForageLb } from './usableForageLb.ts';

// Hectares and kilograms for acres and pounds: the sum does not care.
const withinReachKg = usableForageLb([
  { areaAc: 4000 * 0.6, usableShare: 1, lbPerAc: 300 },
  { areaAc: 4000 * 0.25, usableShare: 0.5, lbPerAc: 300 },
  { areaAc: 4000 * 0.15, usableShare: 0, lbPerAc: 300 },
]);

export default checkList('usableForageLb', [
  {
    what: '4,000 ha at 300 kg, 60 % near water, 25 % half used, 15 % not: kilograms within reach',
    ours: () => withinReachKg,
    printed: '870,000',
    source: 'rangelands-gateway-matching',
    where: 'Step a',
    seen: 'print',
  },
  {
    what: 'The same, 30 % allowed: kilograms usable',
    ours: () => withinReachKg * 0.3,
    printed: '261,000',
    source: 'rangelands-gateway-matching',
    where: 'Step b',
    seen: 'print',
  },
  {
    what: '550 acres at 800 lb',
    ours: () => usableForageLb([{ areaAc: 550, usableShare: 1, lbPerAc: 800 }]),
    printed: '440,000',
    source: 'launchbaugh-stocking-rate',
    where: 'Slide 6',
    seen: 'print',
  },
  {
    what: '550 acres at 800 lb, 45 % proper use',
    ours: () => usableForageLb([{ areaAc: 550, usableShare: 1, lbPerAc: 800 }]) * 0.45,
    printed: '198,000',
    source: 'launchbaugh-stocking-rate',
    where: 'Slide 6',
    seen: 'print',
  },
  {
    what: '65 ha at 1,600 kg, kilograms',
    ours: () => usableForageLb([{ areaAc: 65, usableShare: 1, lbPerAc: 1600 }]),
    printed: '104,000',
    source: 'grazing-calculations-answers',
    where: 'Forage production, example A, step 3',
    seen: 'transcription',
  },
]);
