import { checkList, tableChecks } from '../checks.ts';
import { hardSurfaceCurveNumber } from './hardSurfaceCurveNumber.ts';

/** Open space in good condition, the ground that the printed districts assume between their hard surfaces. */
const openSpace = { A: 39, B: 61, C: 74, D: 80 } as const;
const groupOf = (column: string) => (column === 'A' || column === 'B' || column === 'C' ? column : 'D');

export default checkList('hardSurfaceCurveNumber', [
  ...tableChecks({
    columns: ['A', 'B', 'C', 'D'],
    text: `
      85  89  92  94  95
      72  81  88  91  93
      65  77  85  90  92
      38  61  75  83  87
      30  57  72  81  86
      25  54  70  80  85
      20  51  68  79  84
      12  46  65  77  82
    `,
    what: (hardPercent, group) => `open space in good condition, soil group ${group}, ${hardPercent} % hard surface`,
    ours: (hardPercent, group) =>
      hardSurfaceCurveNumber({ groundCurveNumber: openSpace[groupOf(group)], hardPercent: Number(hardPercent), unconnectedShare: 0 }),
    source: 'tr55-1986',
    where: 'table 2-2a, districts by average impervious area',
    seen: 'transcription',
    differs: (hardPercent, group) =>
      hardPercent === '30' && group === 'D' ? { by: '0.61', because: 'The equation gives 85.4; the table prints 86.' } : undefined,
  }),
  {
    what: 'ground at 74, 25 % hard surface, half of it unconnected',
    ours: () => hardSurfaceCurveNumber({ groundCurveNumber: 74, hardPercent: 25, unconnectedShare: 0.5 }),
    printed: '78',
    source: 'tr55-1986',
    where: 'example 2-4, figure 2-4',
    seen: 'memory',
    differs: { by: '0.51', because: 'The example reads 78 off the chart; the equation gives 78.5.' },
  },
  {
    what: 'ground at 61, 35 % hard surface',
    ours: () => hardSurfaceCurveNumber({ groundCurveNumber: 61, hardPercent: 35, unconnectedShare: 0 }),
    printed: '74',
    source: 'tr55-1986',
    where: 'example 2-3, figure 2-3',
    seen: 'memory',
  },
]);
