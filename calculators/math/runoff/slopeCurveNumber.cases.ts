import { checkList } from '../checks.ts';
import { slopeCurveNumber } from './slopeCurveNumber.ts';

const tabled = { source: 'williams-1995', where: 'tabled numbers stand for 5 % slope', seen: 'transcription' } as const;
const apart = { source: 'williams-1995', where: 'equations worked out apart', seen: 'computed' } as const;

export default checkList('slopeCurveNumber', [
  { what: 'curve number 74 at 5 % slope', ours: () => slopeCurveNumber(74, 5), printed: '74.0', ...tabled },
  { what: 'curve number 61 at 5 % slope', ours: () => slopeCurveNumber(61, 5), printed: '61.0', ...tabled },
  { what: 'curve number 74 at 15 % slope', ours: () => slopeCurveNumber(74, 15), printed: '77.537', ...apart },
  { what: 'curve number 74 on flat ground', ours: () => slopeCurveNumber(74, 0), printed: '69.283', ...apart },
]);
