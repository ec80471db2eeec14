import { checkList, tableChecks } from '../checks.ts';
import { saltsFromConductivity, sulfateFromSulfur } from './sulfateFromSulfur.ts';

const virginia = { source: 'virginia-spes-201', where: 'Table 1', seen: 'print' } as const;

export default checkList('sulfateFromSulfur', [
  {
    what: 'sulfate in one part of sulfur',
    ours: () => sulfateFromSulfur(1),
    printed: '2.9963',
    ...virginia,
    differs: { by: '0.0003', because: 'Older atomic weights.' },
  },
  {
    what: 'sulfur in one part of sulfate',
    ours: () => 1 / sulfateFromSulfur(1),
    printed: '0.3339',
    ...virginia,
    differs: { by: '0.0002', because: 'Older atomic weights.' },
  },
  {
    what: 'sulfate in one part of sulfur',
    ours: () => sulfateFromSulfur(1),
    printed: '3',
    source: 'servitech-water',
    where: 'factors for reports',
    seen: 'print',
  },
  ...tableChecks({
    columns: ['TDS'],
    text: `
      1.5   1000
      5     3000
      8     5000
      11    7000
      16   10000
    `,
    what: (conductivity) => `conductivity ${conductivity} mS/cm, dissolved solids, mg/L`,
    ours: (conductivity) => saltsFromConductivity(Number(conductivity)),
    source: 'montana-livestock-water',
    where: 'edges of the table, both columns',
    seen: 'print',
    differs: (conductivity) => ({
      by: String(640 * Number(conductivity) * 0.07),
      because: 'The table rounds its edges to suit both columns; between them it stands on 625 to 667 mg/L for each mS/cm.',
    }),
  }),
]);
