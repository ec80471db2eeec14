import { textureCenters } from '../../tables/textureCenters.ts';
import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { type WaterRetention, waterRetention } from './waterRetention.ts';

const centers: Readonly<Record<string, { readonly sandPercent: number; readonly clayPercent: number }>> = textureCenters.centers;
const at = (texture: string, organicMatterPercent: number = textureCenters.organicMatterPercent): WaterRetention => {
  const center = centers[texture];
  if (!center) throw new RangeError(`no texture ${texture}`);
  return waterRetention({ ...center, organicMatterPercent });
};
const columns: Readonly<Record<string, (soil: WaterRetention) => number>> = {
  'wilting point, %': (soil) => 100 * soil.wiltingPointInPerIn,
  'field capacity, %': (soil) => 100 * soil.fieldCapacityInPerIn,
  'saturation, %': (soil) => 100 * soil.saturationInPerIn,
  'plant available, %': (soil) => (100 * soil.availableInPerFt) / 12,
  'conductivity, mm/h': (soil) => soil.conductivityMmPerH,
  'matric density, g/cm3': (soil) => soil.densityGPerCm3,
};
const column = (name: string, soil: WaterRetention): number => needThere('waterRetention', name, columns[name])(soil);
const loam = { sandPercent: 40, clayPercent: 20, organicMatterPercent: 2.5 } as const;

export default checkList('waterRetention', [
  ...tableChecks({
    columns: Object.keys(columns),
    text: `
      sand            5  10 46 5  108.1 1.43
      loamy-sand      5  12 46 7  96.7  1.43
      sandy-loam      8  18 45 10 50.3  1.46
      loam            14 28 46 14 15.5  1.43
      silt-loam       11 31 48 20 16.1  1.38
      silt            6  30 48 25 22.0  1.38
      sandy-clay-loam 17 27 43 10 11.3  1.50
      clay-loam       22 36 48 14 4.3   1.39
      silty-clay-loam 22 38 51 17 5.7   1.30
      silty-clay      27 41 52 14 3.7   1.26
      sandy-clay      25 36 44 11 1.4   1.47
      clay            30 42 50 12 1.1   1.33`,
    what: (texture, name) => `${texture.replaceAll('-', ' ')}, 2.5 % organic matter: ${name}`,
    ours: (texture, name) => column(name, at(texture)),
    source: 'saxton-rawls-2006',
    where: 'table 3',
    seen: 'transcription',
  }),
  ...tableChecks({
    columns: ['wilting point, %', 'field capacity, %', 'saturation, %', 'plant available, %', 'conductivity, mm/h', 'matric density, g/cm3'],
    text: `
      1 12.78 26.32 42.00 13.54 10.6 1.537
      2 13.39 27.41 44.63 14.02 13.7 1.467
      4 14.63 29.64 49.93 15.01 21.7 1.327
      6 15.86 31.93 55.29 16.07 32.2 1.185`,
    what: (organic, name) => `loam, ${organic} % organic matter: ${name}`,
    ours: (organic, name) => column(name, at('loam', Number(organic))),
    source: 'saxton-rawls-2006',
    where: 'equations 1 to 18, worked in another program',
    seen: 'computed',
  }),
  {
    what: 'loam packed to 1.2 times its density: saturation, share',
    ours: () => waterRetention({ ...loam, densityFactor: 1.2 }).saturationInPerIn,
    printed: '0.3514',
    source: 'saxton-rawls-2006',
    where: 'equations 7 to 10, worked in another program',
    seen: 'computed',
  },
  {
    what: 'loam packed to 1.2 times its density: field capacity, share',
    ours: () => waterRetention({ ...loam, densityFactor: 1.2 }).fieldCapacityInPerIn,
    printed: '0.2580',
    source: 'saxton-rawls-2006',
    where: 'equations 7 to 10, worked in another program',
    seen: 'computed',
  },
  {
    what: 'loam packed to 1.2 times its density: conductivity, mm/h',
    ours: () => waterRetention({ ...loam, densityFactor: 1.2 }).conductivityMmPerH,
    printed: '2.33',
    source: 'saxton-rawls-2006',
    where: 'equations 7 to 18, worked in another program',
    seen: 'computed',
  },
]);
