import { checkList, tableChecks } from '../checks.ts';
import { windAt2MetersMPerS } from './windAt2MetersMPerS.ts';

export default checkList('windAt2MetersMPerS', [
  ...tableChecks({
    columns: ['factor'],
    text: `
      1    1.178
      1.2  1.125
      1.6  1.051
      2    1.000
      3    .921
      4    .872
      5    .838
      6    .812
      8    .775
      10   .748
    `,
    what: (height) => `Factor from ${height} m to 2 m`,
    ours: (height) => windAt2MetersMPerS(1, Number(height)),
    source: 'allen-1998',
    where: 'annex 2, table 2.9',
    seen: 'print',
  }),
  {
    what: '10 km/h at 10 m',
    ours: () => windAt2MetersMPerS(10 / 3.6, 10),
    printed: '2.078',
    source: 'allen-1998',
    where: 'example 18',
    seen: 'print',
  },
  {
    what: '3.2 m/s at 10 m',
    ours: () => windAt2MetersMPerS(3.2, 10),
    printed: '2.4',
    source: 'allen-1998',
    where: 'example 14',
    seen: 'transcription',
  },
]);
