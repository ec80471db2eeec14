import type { CoverCondition } from '../../tables/curveNumbers.ts';
import { type Check, checkList, tableChecks } from '../checks.ts';
import type { TabledCover } from './tabledCover.ts';
import { tabledCurveNumber } from './tabledCurveNumber.ts';

const groups = ['A', 'B', 'C', 'D'];
const soilGroups = { A: 'a', B: 'b', C: 'c', D: 'd' } as const;
const isGroup = (column: string): column is keyof typeof soilGroups => Object.hasOwn(soilGroups, column);
const rowOf = (cover: TabledCover, condition: CoverCondition, where: string, text: string): Check[] =>
  tableChecks({
    columns: groups,
    text: `${cover} ${text}`,
    what: (row, column) => `${row}, ${condition}, soil group ${column}`,
    ours: (_, column) => (isGroup(column) ? (tabledCurveNumber(cover, condition, soilGroups[column]) ?? 'none') : 'none'),
    source: 'tr55-1986',
    where,
    seen: 'memory',
  });

export default checkList('tabledCurveNumber', [
  ...rowOf('pasture', 'poor', 'table 2-2c', '68 79 86 89'),
  ...rowOf('meadow', 'only', 'table 2-2c', '30 58 71 78'),
  ...rowOf('woods', 'good', 'table 2-2c', '30 55 70 77'),
  ...rowOf('sagebrush', 'fair', 'table 2-2d', '- 51 63 70'),
  ...rowOf('desert-shrub', 'poor', 'table 2-2d', '63 77 85 88'),
  ...rowOf('fallow-bare', 'only', 'table 2-2b', '77 86 91 94'),
  ...rowOf('row-crops-straight-row', 'good', 'table 2-2b', '67 78 85 89'),
  ...rowOf('small-grain-contoured-terraced', 'poor', 'table 2-2b', '61 72 79 82'),
]);
