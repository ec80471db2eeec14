import { checkList, tableChecks } from '../checks.ts';
import { atmosphericPressureKpa, psychrometricConstantKpaPerC } from './atmosphericPressureKpa.ts';

const ours = (elevation: string, column: string): number =>
  column === 'P' ? atmosphericPressureKpa(Number(elevation)) : psychrometricConstantKpaPerC(Number(elevation));
const what = (elevation: string, column: string): string =>
  `${column === 'P' ? 'Air pressure' : 'Psychrometric constant'} at ${elevation} m above the sea`;

export default checkList('atmosphericPressureKpa', [
  ...tableChecks({
    columns: ['P', 'γ'],
    text: `
      0     101.3  .067
      100   100.1  .067
      500   95.5   .064
      1000  90.0   .060
      1500  84.8   .056
      2000  79.8   .053
      3000  70.5   .047
      4000  62.1   .041
    `,
    what,
    ours,
    source: 'allen-1998',
    where: 'annex 2, tables 2.1 and 2.2',
    seen: 'print',
  }),
  ...tableChecks({
    columns: ['P', 'γ'],
    text: `
      2    101.3  .0674
      100  100.1  .0666
      200  -      .066
    `,
    what,
    ours,
    source: 'allen-1998',
    where: 'examples 17, 18, 20',
    seen: 'print',
    differs: (elevation, column) =>
      elevation === '2' && column === 'γ'
        ? { by: '0.000052', because: 'The exact value is 0.067349; the example rounds from 101.3 kPa.' }
        : undefined,
  }),
  ...tableChecks({ columns: ['P', 'γ'], text: '1800  81.8  .054', what, ours, source: 'allen-1998', where: 'example 2', seen: 'transcription' }),
]);
