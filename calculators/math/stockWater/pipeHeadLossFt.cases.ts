import { pipeInsideIn } from '../../tables/stockWater.ts';
import { checkList, tableChecks } from '../checks.ts';
import { feetPerPsi, pipeHeadLossFt, pipeSpeedFtPerS } from './pipeHeadLossFt.ts';

const example = { source: 'engineering-toolbox-hazen-williams', where: 'example', seen: 'print' } as const;
const insideIn: Readonly<Record<string, number>> = pipeInsideIn;
const per100 = (flow: string, size: string, roughness: number): number => {
  const inside = insideIn[size];
  if (inside === undefined) throw new RangeError(`pipeInsideIn has no pipe of ${size}`);
  return pipeHeadLossFt(Number(flow), { insideIn: inside, lengthFt: 100, roughness });
};

/** Where a chart stands on another edition of the equation: a share of the printed value and half of its last digit. */
const within = (printedHalfDigit: number, share: number, value: number): string => String(printedHalfDigit + share * value);

/** How far the polyethylene chart stands off, where it is more than half of its last digit: feet in 100 ft. */
const chartOff: Readonly<Record<string, string>> = {
  '6 3/4': '0.022',
  '8 3/4': '0.08',
  '10 3/4': '0.08',
  '8 1': '0.07',
  '20 1': '0.13',
  '6 1-1/4': '0.007',
  '8 1-1/4': '0.017',
  '30 1-1/4': '0.09',
  '40 1-1/4': '0.11',
  '8 1-1/2': '0.009',
  '20 1-1/2': '0.018',
  '30 1-1/2': '0.03',
  '60 1-1/2': '0.13',
};

export default checkList('pipeHeadLossFt', [
  {
    what: '200 gallons a minute, 3.048 in, C 140, ft in 100 ft',
    ours: () => pipeHeadLossFt(200, { insideIn: 3.048, lengthFt: 100, roughness: 140 }),
    printed: '9',
    ...example,
  },
  { what: 'the same in 30 ft, ft', ours: () => pipeHeadLossFt(200, { insideIn: 3.048, lengthFt: 30, roughness: 140 }), printed: '2.7', ...example },
  ...tableChecks({
    columns: ['ft', 'psi'],
    text: `
       2   0.59   0.26
       4   2.13   0.92
       6   4.52   1.96
       8   7.69   3.33
      10  11.63   5.04
      12  16.30   7.06
      15  24.64  10.67
      18  34.54  14.96
      20  41.99  18.18
      25  63.47  27.48
      30  88.97  38.52
    `,
    what: (flow, column) => `${flow} gallons a minute, 1 in steel, C 100, ${column} in 100 ft`,
    ours: (flow, column) => per100(flow, '1', 100) / (column === 'psi' ? feetPerPsi : 1),
    source: 'law-supply-friction-2003',
    where: 'chart, head loss in feet and psi',
    seen: 'print',
    differs: (flow, column) => ({
      by: within(0.005, 0.0093, per100(flow, '1', 100) / (column === 'psi' ? feetPerPsi : 1)),
      because: 'The chart prints its equation: 1,043.94 where this one has 0.2083 × 100^1.852 = 1,053.5, so it stands 0.9 percent lower.',
    }),
  }),
  ...tableChecks({
    columns: ['ft/s'],
    text: `
       2   0.74
       4   1.48
       6   2.22
       8   2.97
      10   3.71
      12   4.45
      15   5.56
      18   6.67
      20   7.42
      25   9.27
      30  11.12
    `,
    what: (flow) => `${flow} gallons a minute, 1 in steel, speed, ft a second`,
    ours: (flow) => pipeSpeedFtPerS(Number(flow), 1.049),
    source: 'law-supply-friction-2003',
    where: 'chart, velocity',
    seen: 'print',
    differs: (flow) => ({
      by: within(0.005, 0.0021, pipeSpeedFtPerS(Number(flow), 1.049)),
      because: 'The chart stands 0.2 percent lower, as a bore of 1.050 in would.',
    }),
  }),
  ...tableChecks({
    columns: ['3/4', '1', '1-1/4', '1-1/2'],
    text: `
       4   3.73   1.15  0.30   0.14
       6   7.89   2.44  0.65   0.3
       8  13.4    4.1   1.08   0.51
      10  20.3    6.3   1.66   0.78
      20  -      22.6   6.0    2.81
      30  -      -     12.6    5.96
      40  -      -     21.5   10.2
      50  -      -     -      15.4
      60  -      -     -      21.5
    `,
    what: (flow, size) => `${flow} gallons a minute, ${size} in polyethylene, ft in 100 ft`,
    ours: (flow, size) => per100(flow, size, 140),
    source: 'apm-pipe-loss',
    where: 'PE columns, nine of its rows',
    seen: 'print',
    differs: (flow, size) => {
      const by = chartOff[`${flow} ${size}`];
      return by === undefined
        ? undefined
        : { by, because: 'The chart does not print its equation: it stands up to 0.6 percent lower, or cuts a digit.' };
    },
  }),
  ...tableChecks({
    columns: ['1', '1-1/4', '1-1/2', '2'],
    text: `
       5  1.52  0.39  0.18  -
      10  5.50  1.46  0.70  0.21
      15  -     3.06  1.45  0.44
      20  -     5.23  2.46  0.74
      25  -     -     3.75  1.10
      30  -     -     5.22  1.54
    `,
    what: (flow, size) => `${flow} gallons a minute, ${size} in Schedule 40 plastic, C 150, ft in 100 ft`,
    ours: (flow, size) => per100(flow, size, 150),
    source: 'illinois-77-906-exhibit-i',
    where: 'exhibit I, six of its rows',
    seen: 'transcription',
    differs: (flow, size) => ({
      by: within(0.005, 0.035, per100(flow, size, 150)),
      because: 'The exhibit does not print its equation: it stands up to 3 percent, or a hundredth of a foot, off either way.',
    }),
  }),
]);
