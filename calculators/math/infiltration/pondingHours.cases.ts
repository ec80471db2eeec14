import { checkList } from '../checks.ts';
import { greenAmptDepthCm, greenAmptRateCmPerHr } from './greenAmptDepthCm.ts';
import { pondingDepthCm, pondingHours } from './pondingHours.ts';

const soil = { conductivityCmPerHr: 0.044, suctionCm: 22.4, moistureDeficit: 0.25 };
const note = { source: 'merced-ess110-2008', where: 'worked ponding example', seen: 'print' } as const;
const apart = { source: 'merced-ess110-2008', where: 'the same example carried on, worked out apart', seen: 'computed' } as const;
const atTwoHoursCm = () => greenAmptDepthCm({ hours: 2 - pondingHours(0.5, soil), soil, startCm: pondingDepthCm(0.5, soil) });

export default checkList('pondingHours', [
  { what: 'rain of 0.5 cm an hour: depth at ponding', ours: () => pondingDepthCm(0.5, soil), printed: '0.54', ...note },
  { what: 'rain of 0.5 cm an hour: time to ponding', ours: () => pondingHours(0.5, soil), printed: '1.08', ...note },
  { what: 'after two hours: depth', ours: atTwoHoursCm, printed: '0.897', ...apart },
  { what: 'after two hours: runoff', ours: () => 1 - atTwoHoursCm(), printed: '0.103', ...apart },
  { what: 'after two hours: rate', ours: () => greenAmptRateCmPerHr(atTwoHoursCm(), soil), printed: '0.319', ...apart },
]);
