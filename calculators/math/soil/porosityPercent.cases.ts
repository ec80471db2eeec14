import { checkList, tableChecks } from '../checks.ts';
import { porosityPercent, volumetricWaterPercent, waterFilledPorePercent } from './porosityPercent.ts';

const problems = { source: 'ucdavis-ssc100', seen: 'print' } as const;
const quiz = { source: 'arizona-swes200-quiz', seen: 'transcription' } as const;

export default checkList('porosityPercent', [
  { what: 'density 1.35', ours: () => porosityPercent(1.35), printed: '49', where: 'problem 6', ...problems },
  { what: 'density 1.46', ours: () => porosityPercent(1.46), printed: '45', where: 'problem 8', ...problems },
  { what: '185 g of soil in 188 cm3', ours: () => porosityPercent(185 / 188), printed: '63', where: 'problem 9', ...problems },
  {
    what: '185 g of soil with 65 g of water in 188 cm3: share of pores with water',
    ours: () => waterFilledPorePercent((100 * 65) / 185, 185 / 188),
    printed: '55',
    where: 'problem 9',
    ...problems,
  },
  { what: '35 % by weight at density 1.3', ours: () => volumetricWaterPercent(35, 1.3), printed: '45.5', where: 'question 1', ...quiz },
  { what: '27 % by weight at density 1.3', ours: () => volumetricWaterPercent(27, 1.3), printed: '35.1', where: 'question 1', ...quiz },
  { what: '8 % by weight at density 1.3', ours: () => volumetricWaterPercent(8, 1.3), printed: '10.4', where: 'question 1', ...quiz },
  ...tableChecks({
    columns: ['porosity'],
    text: `
      1.10 58.5
      1.30 50.9
      1.40 47.2
      1.47 44.5
      1.60 39.6
      1.65 37.7
      1.80 32.1`,
    what: (density) => `density ${density}`,
    ours: (density) => porosityPercent(Number(density)),
    source: 'ucdavis-ssc100',
    where: 'formula of problem 6, worked in another program',
    seen: 'computed',
  }),
]);
