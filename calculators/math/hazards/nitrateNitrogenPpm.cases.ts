import { checkList } from '../checks.ts';
import { type NitrateForm, nitrateAsPpm, nitrateNitrogenPpm } from './nitrateNitrogenPpm.ts';

const anderson = { source: 'anderson-nitrate-2016', where: 'factors', seen: 'print' } as const;
const harty = { source: 'harty-nitrate', where: 'levels in water and forage', seen: 'print' } as const;
const beck = { source: 'beck-nitrate', where: 'first row of the table', seen: 'print' } as const;
const drinking = { source: 'meyer-nitrates-2014', where: 'maximum contaminant level', seen: 'print' } as const;
const from = (amount: number, form: NitrateForm, unit: 'ppm' | 'percent' = 'ppm') =>
  nitrateNitrogenPpm({ amount, form, unit, basis: 'dry', dryMatterPercent: 100 });
const rounded = (by: string) => ({ by, because: 'The source rounds its levels; the exact factors are 4.427 and 7.218.' });

export default checkList('nitrateNitrogenPpm', [
  { what: 'nitrate in one part of nitrate nitrogen', ours: () => nitrateAsPpm(1, 'no3'), printed: '4.43', ...anderson },
  { what: 'nitrate nitrogen in one part of nitrate', ours: () => from(1, 'no3'), printed: '0.226', ...anderson },
  { what: 'nitrogen in the nitrate ion, percent', ours: () => from(100, 'no3'), printed: '22.6', ...anderson },
  {
    what: '9,000 ppm of nitrate, nitrate nitrogen, ppm',
    ours: () => from(9000, 'no3'),
    printed: '2,000',
    ...anderson,
    where: 'level where concerns begin',
    differs: rounded('34'),
  },
  {
    what: '10,000 ppm of nitrate, nitrate nitrogen, ppm',
    ours: () => from(10_000, 'no3'),
    printed: '2,300',
    ...anderson,
    where: 'level where concerns begin',
    differs: rounded('42'),
  },
  {
    what: 'potassium nitrate in one part of nitrogen',
    ours: () => nitrateAsPpm(1, 'kno3'),
    printed: '7.2162',
    source: 'virginia-spes-201',
    where: 'Table 1',
    seen: 'print',
    differs: { by: '0.002', because: 'The table stands on older or rounded atomic weights; today they give 7.2178.' },
  },
  {
    what: 'nitrate in one part of nitrate nitrogen',
    ours: () => nitrateAsPpm(1, 'no3'),
    printed: '4.43',
    source: 'servitech-water',
    where: 'factors for reports',
    seen: 'print',
  },
  { what: '0.15 percent of nitrate nitrogen, ppm', ours: () => from(0.15, 'no3-n', 'percent'), printed: '1,500', ...harty, seen: 'computed' },
  { what: '100 ppm of nitrate nitrogen, nitrate, ppm', ours: () => nitrateAsPpm(100, 'no3'), printed: '440', ...harty, differs: rounded('3') },
  { what: '300 ppm of nitrate nitrogen, nitrate, ppm', ours: () => nitrateAsPpm(300, 'no3'), printed: '1300', ...harty, differs: rounded('29') },
  { what: '700 ppm of nitrate nitrogen, nitrate, ppm', ours: () => nitrateAsPpm(700, 'no3'), printed: '3,000', ...beck, differs: rounded('100') },
  {
    what: '700 ppm of nitrate nitrogen, potassium nitrate, ppm',
    ours: () => nitrateAsPpm(700, 'kno3'),
    printed: '5,000',
    ...beck,
    differs: rounded('53'),
  },
  { what: '10 mg/L of nitrate nitrogen, nitrate, mg/L', ours: () => nitrateAsPpm(10, 'no3'), printed: '45', ...drinking, differs: rounded('0.8') },
]);
