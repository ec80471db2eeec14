import { checkList, tableChecks } from '../checks.ts';
import { growingCattleIntakeLb } from './growingCattleIntakeLb.ts';

const worked = { source: 'nrc-beef-1996', where: 'chapter 7, equation for growing cattle, worked out apart', seen: 'computed' } as const;
const ageOf = (row: string): 'calf' | 'yearling' => (row.startsWith('calf') ? 'calf' : 'yearling');

export default checkList(
  'growingCattleIntakeLb',
  tableChecks({
    columns: ['400', '600', '800'],
    text: `
      calf,55      9.7  13.1 16.3
      calf,60      10.2 13.8 17.1
      calf,65      10.4 14.1 17.5
      yearling,60  12.3 16.6 20.6
    `,
    what: (row, weight) => `${row.replace(',', ', TDN ')} %, ${weight} lb: lb a day`,
    ours: (row, weight) => growingCattleIntakeLb({ weightLb: Number(weight), tdnPercent: Number(row.split(',')[1]), age: ageOf(row) }),
    ...worked,
  }),
);
