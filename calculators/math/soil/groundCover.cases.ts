import { checkList, tableChecks } from '../checks.ts';
import { groundCover } from './groundCover.ts';

export default checkList('groundCover', [
  {
    what: '44 of 100 foot marks',
    ours: () => groundCover({ hits: 44, points: 100 }).coverPercent,
    printed: '44',
    source: 'missouri-g1570',
    where: 'counting the marks',
    seen: 'computed',
  },
  {
    what: '40 of 100 knots',
    ours: () => groundCover({ hits: 40, points: 100 }).coverPercent,
    printed: '40',
    source: 'illinois-60-ways',
    where: 'page 4, residue cover in the field',
    seen: 'computed',
  },
  ...tableChecks({
    columns: ['low', 'high'],
    text: `
      3/20/95   0.0321 0.3789
      12/30/90  0.2495 0.5661
      42/100/95 0.3220 0.5229
      85/120/99 0.5904 0.8092`,
    what: (row, end) => {
      const [hits, points, confidence] = row.split('/');
      return `${hits} of ${points} points, ${confidence} % confidence: ${end} end, share`;
    },
    ours: (row, end) => {
      const [hits = Number.NaN, points = Number.NaN, confidence = Number.NaN] = row.split('/').map(Number);
      const { lowPercent, highPercent } = groundCover({ hits, points, confidence: confidence / 100 });
      return (end === 'low' ? lowPercent : highPercent) / 100;
    },
    source: 'codingace-exact-interval',
    where: 'example data table',
    seen: 'print',
  }),
]);
