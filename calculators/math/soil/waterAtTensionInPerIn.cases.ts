import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { waterAtTensionInPerIn } from './waterAtTensionInPerIn.ts';
import { waterRetention } from './waterRetention.ts';

const soils: Readonly<Record<string, readonly [sandPercent: number, clayPercent: number]>> = {
  'sandy-loam': [65, 10],
  loam: [40, 20],
  clay: [25, 50],
};

export default checkList('waterAtTensionInPerIn', [
  ...tableChecks({
    columns: ['33', '60', '100', '300', '500', '1000', '1500'],
    text: `
      sandy-loam 17.92 15.81 14.22 11.30 10.16 8.79  8.08
      loam       27.96 25.01 22.73 18.51 16.83 14.78 13.70
      clay       42.06 39.85 38.05 34.46 32.90 30.90 29.79`,
    what: (soil, tension) => `${soil.replaceAll('-', ' ')}, 2.5 % organic matter, at ${tension} kPa, percent by volume`,
    ours: (soil, tension) => {
      const [sandPercent, clayPercent] = needThere('waterAtTensionInPerIn', soil, soils[soil]);
      return 100 * waterAtTensionInPerIn(waterRetention({ sandPercent, clayPercent, organicMatterPercent: 2.5 }), Number(tension));
    },
    source: 'saxton-rawls-2006',
    where: 'equations 11, 14 and 15, worked in another program',
    seen: 'computed',
  }),
]);
