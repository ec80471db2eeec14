import { checkList } from '../checks.ts';
import { dryWeightG, gravimetricWaterPercent } from './gravimetricWaterPercent.ts';

const quiz = { source: 'arizona-swes200-quiz', where: 'question 1', seen: 'transcription' } as const;
const problems = { source: 'ucdavis-ssc100', seen: 'print' } as const;

export default checkList('gravimetricWaterPercent', [
  {
    what: '361.6 g moist, 298.8 g dry',
    ours: () => gravimetricWaterPercent(361.6, 298.8),
    printed: '21.0',
    source: 'massachusetts-plsoil105',
    where: 'worked example, question 1',
    seen: 'print',
  },
  { what: '135 g full, 100 g dry', ours: () => gravimetricWaterPercent(135, 100), printed: '35', ...quiz },
  { what: '127 g drained, 100 g dry', ours: () => gravimetricWaterPercent(127, 100), printed: '27', ...quiz },
  { what: '108 g at wilting, 100 g dry', ours: () => gravimetricWaterPercent(108, 100), printed: '8', ...quiz },
  { what: '600 g with 10 % water: dry weight, g', ours: () => dryWeightG(600, 10), printed: '545.5', where: 'problem 2', ...problems },
  { what: '650 g with 12 % water: dry weight, g', ours: () => dryWeightG(650, 12), printed: '580.4', where: 'problem 3', ...problems },
]);
