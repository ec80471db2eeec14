import { type Check, checkList, tableChecks } from '../checks.ts';
import { erodibilityByNomograph, type PermeabilityCode, permeabilityCode, type StructureCode } from './erodibilityByNomograph.ts';
import { erodibilityMetric } from './soilLossMetric.ts';

type Soil = readonly [siltVeryFineSand: number, clay: number, organic: number, structure: StructureCode, permeability: PermeabilityCode];
const erodibility = ([siltVeryFineSandPercent, clayPercent, organicMatterPercent, structureCode, permeability]: Soil): number =>
  erodibilityByNomograph({ siltVeryFineSandPercent, clayPercent, organicMatterPercent, structureCode, permeabilityCode: permeability });
const spoken = ([siltVeryFineSand, clay, organic, structure, permeability]: Soil): string =>
  `${siltVeryFineSand} % silt and very fine sand, ${clay} % clay, ${organic} % organic matter, structure ${structure}, permeability ${permeability}`;
const chart = (soil: Soil, printed: string, where: string): Check => ({
  what: spoken(soil),
  ours: () => erodibility(soil),
  printed,
  source: 'wischmeier-smith-1978',
  where,
  seen: 'memory',
});
const worked = (soil: Soil, us: string, metric: string): Check[] => [
  {
    what: spoken(soil),
    ours: () => erodibility(soil),
    printed: us,
    source: 'wischmeier-smith-1978',
    where: 'figure 3, equation worked in another program',
    seen: 'computed',
  },
  {
    what: `${spoken(soil)}, metric`,
    ours: () => erodibilityMetric(erodibility(soil)),
    printed: metric,
    source: 'foster-1981',
    where: 'table 2, worked in another program',
    seen: 'computed',
  },
];

export default checkList('erodibilityByNomograph', [
  chart([65, 30, 2.8, 2, 4], '0.31', 'figure 3, example'),
  chart([65, 30, 3, 2, 3], '0.28', 'figure 3, first approximation of the example'),
  ...worked([65, 30, 3, 2, 4], '0.3046', '0.0401'),
  ...worked([30, 35, 2, 4, 5], '0.2333', '0.0307'),
  ...worked([70, 15, 2, 2, 3], '0.4219', '0.0556'),
  ...tableChecks({
    columns: ['class'],
    text: `
      7    1
      3    2
      1    3
      0.4  4
      0.1  5
      0.05 6`,
    what: (inchesPerHour) => `${inchesPerHour} in/h, 1978 limits`,
    ours: (inchesPerHour) => permeabilityCode(Number(inchesPerHour), '1978'),
    source: 'weiner-matthews-2003',
    where: 'figure 11-2, permeability classes of the nomograph, worked by hand',
    seen: 'computed',
  }),
]);
