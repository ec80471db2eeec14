import { checkList, tableChecks } from '../checks.ts';
import { soilLossTonPerAc } from './soilLossTonPerAc.ts';

const russell = { rainErosivity: 175, soilErodibility: 0.37, slopeFactor: 1.41 } as const;

export default checkList('soilLossTonPerAc', [
  {
    what: 'small grain on loamy sand, 4 % slope of 400 ft',
    ours: () => soilLossTonPerAc({ rainErosivity: 220, soilErodibility: 0.1, slopeFactor: 0.73, coverFactor: 0.29, practiceFactor: 1 }),
    printed: '4.6574',
    source: 'field-solie-2007',
    where: 'sample problem',
    seen: 'transcription',
  },
  ...tableChecks({
    columns: ['loss'],
    text: `
      1/1      91.3
      .119/1   10.9
      .119/.5  5.4
      .075/.5  3.4`,
    what: (factors) => `Russell silt loam, 8 % slope of 200 ft, cover and practice ${factors}`,
    ours: (factors) => {
      const [coverFactor = Number.NaN, practiceFactor = Number.NaN] = factors.split('/').map(Number);
      return soilLossTonPerAc({ ...russell, coverFactor, practiceFactor });
    },
    source: 'wischmeier-smith-1978',
    where: 'example for Fountain County, Indiana',
    seen: 'memory',
  }),
]);
