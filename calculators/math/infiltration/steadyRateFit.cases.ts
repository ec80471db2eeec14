import { checkList } from '../checks.ts';
import { steadyRateFit } from './steadyRateFit.ts';

const points = [
  { elapsedHours: 0.1, cumulativeIn: 0.9 },
  { elapsedHours: 0.35, cumulativeIn: 1.9 },
  { elapsedHours: 0.8, cumulativeIn: 3.1 },
];
const apart = { source: 'philip-1957', where: 'two-term equation, fitted by NumPy', seen: 'computed' } as const;

export default checkList('steadyRateFit', [
  { what: 'three pourings: steady rate', ours: () => steadyRateFit(points).steadyInPerHr, printed: '1.06820', ...apart },
  { what: 'three pourings: sorptivity', ours: () => steadyRateFit(points).sorptivityInPerRootHr, printed: '2.53279', ...apart },
]);
